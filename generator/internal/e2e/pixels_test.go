package e2e

import (
	"context"
	"image"
	"image/color"
	"image/png"
	"os"
	"path/filepath"
	"testing"
)

// shot is the viewport as it is seen.
func (p *page) shot() image.Image {
	p.t.Helper()
	var im image.Image
	p.must(func(ctx context.Context, _ string) (err error) {
		im, err = p.tab.Screenshot(ctx)
		return err
	}, "")
	return im
}

// picture saves what is seen, in colour and in grey, for a person to look at:
// into the folder that the variable SUTUR_PICTURES names, if it names one.
func picture(t testing.TB, name string, im image.Image) {
	t.Helper()
	dir := os.Getenv("SUTUR_PICTURES")
	if dir == "" {
		return
	}
	b := im.Bounds()
	grey := image.NewGray(b)
	for y := b.Min.Y; y < b.Max.Y; y++ {
		for x := b.Min.X; x < b.Max.X; x++ {
			grey.Set(x, y, color.GrayModel.Convert(im.At(x, y)))
		}
	}
	for name, im := range map[string]image.Image{name: im, name + "-grey": grey} {
		if err := os.MkdirAll(dir, 0o755); err != nil {
			t.Fatal(err)
		}
		f, err := os.Create(filepath.Join(dir, name+".png"))
		if err != nil {
			t.Fatal(err)
		}
		if err := png.Encode(f, im); err != nil {
			t.Fatal(err)
		}
		if err := f.Close(); err != nil {
			t.Fatal(err)
		}
	}
}

// settled waits until nothing is laid out or painted any more: two pictures in a
// row are alike.
func (p *page) settled() image.Image {
	p.t.Helper()
	eval[any](p, `document.fonts.ready.then(() => {
		if (globalThis.still) return;
		// A scroll bar that fades away would be waited for.
		const still = globalThis.still = new CSSStyleSheet();
		still.replaceSync("* { scrollbar-width: none; caret-color: transparent !important; transition: none !important; }");
		document.adoptedStyleSheets = [...document.adoptedStyleSheets, still];
	})`)
	last := p.shot()
	for range 100 {
		eval[any](p, `new Promise(r => requestAnimationFrame(() => requestAnimationFrame(() => r(0))))`)
		now := p.shot()
		if same(last, now) {
			return now
		}
		last = now
	}
	p.t.Fatalf("the page does not come to rest\n%s", p.describe())
	return nil
}

func same(a, b image.Image) bool {
	if a.Bounds() != b.Bounds() {
		return false
	}
	r := a.Bounds()
	for y := r.Min.Y; y < r.Max.Y; y++ {
		for x := r.Min.X; x < r.Max.X; x++ {
			if a.At(x, y) != b.At(x, y) {
				return false
			}
		}
	}
	return true
}
