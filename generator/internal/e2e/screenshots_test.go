package e2e

import (
	"bytes"
	"cmp"
	"fmt"
	"image"
	"image/color"
	"image/draw"
	"image/png"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"

	"sutur/generator/internal/site"
)

// TestScreenshots takes the pictures of the manifest anew, for make screenshots. No name is in them
// but a made-up one.
func TestScreenshots(t *testing.T) {
	if os.Getenv("SCREENSHOTS") == "" {
		t.Skip("it writes site-src/screenshots: make screenshots asks for it")
	}
	s := serve(t, "/", built(t))
	p := newPage(t)
	taken := map[string]bool{}
	take := func(name string) {
		t.Helper()
		p.view(name)
		if strings.HasSuffix(name, "-lines.png") {
			eval[any](p, `(scrollTo(0, 0), 0)`)
		}
		p.do(waitFonts())
		few, err := inFewColours(p.settle())
		if err == nil {
			err = os.WriteFile(filepath.Join(root, "site-src", "screenshots", name), few, 0o644)
		}
		if err != nil {
			t.Fatal(err)
		}
		taken[name] = true
	}
	p.begin(s.address, "Maryam")
	p.click("settled")
	p.wait("the first rule, and everything to be kept", visible(hook("next-teach"))+" && "+visible(hook("sign")))
	take("narrow-today.png")
	const last = from + 4
	want := places(t, rule, surah, from, last)
	p.choose(rule, surah, from, last)
	for _, a := range want[1:] {
		p.tap(a)
	}
	p.wait("the marks", fmt.Sprintf(`CSS.highlights.get("f-%s")?.size === %d`, family, len(want)-1))
	take("narrow-lines.png")
	take("wide-lines.png")
	p.view("narrow-")
	p.check()
	p.wait("the check", visible(hook("found")))
	eval[any](p, `(document.querySelector("[data-t=missed]").scrollIntoView({ block: "end" }), scrollBy(0, 180), 0)`)
	take("narrow-check.png")
	p.open(s.address + "#/rules")
	p.wait("the order of the rules", `document.querySelectorAll("main.rules li").length > 9`)
	take("wide-rules.png")
	for _, x := range site.Shots {
		if !taken[x[0]] {
			t.Errorf("no picture is taken for %s", x[0])
		}
	}
}

// view is a screen of the form that a picture's name begins with.
func (p *page) view(name string) {
	p.t.Helper()
	w, h := int64(1280), int64(800)
	if strings.HasPrefix(name, "narrow") {
		w, h = 412, 824
	}
	p.do(chromedp.EmulateViewport(w, h))
	call(p, emulation.SetScrollbarsHidden, emulation.SetScrollbarsHiddenParams{Hidden: true})
}

// settle waits until two pictures in a row are the same, and returns it as a PNG.
func (p *page) settle() []byte {
	p.t.Helper()
	for last := []byte(nil); ; {
		now, err := chromedp.Run(p.ctx, chromedp.CaptureScreenshot())
		if err != nil {
			p.t.Fatal(err)
		}
		if bytes.Equal(now, last) {
			return now
		}
		last = now
		p.frames()
	}
}

// inFewColours makes a PNG a small one: with its 64 most frequent colours, of which every other one
// gets the nearest.
func inFewColours(data []byte) ([]byte, error) {
	im, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		return nil, err
	}
	n := map[color.RGBA]int{}
	r := im.Bounds()
	for y := r.Min.Y; y < r.Max.Y; y++ {
		for x := r.Min.X; x < r.Max.X; x++ {
			n[color.RGBAModel.Convert(im.At(x, y)).(color.RGBA)]++
		}
	}
	all := slices.SortedFunc(maps.Keys(n), func(a, b color.RGBA) int {
		return cmp.Or(cmp.Compare(n[b], n[a]), cmp.Compare(a.R, b.R), cmp.Compare(a.G, b.G), cmp.Compare(a.B, b.B))
	})
	var few color.Palette
	for _, c := range all[:min(64, len(all))] {
		few = append(few, c)
	}
	out := image.NewPaletted(r, few)
	draw.Draw(out, r, im, r.Min, draw.Src)
	var b bytes.Buffer
	if err := (&png.Encoder{CompressionLevel: png.BestCompression}).Encode(&b, out); err != nil {
		return nil, err
	}
	return b.Bytes(), nil
}
