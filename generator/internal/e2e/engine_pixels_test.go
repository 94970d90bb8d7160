package e2e

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"image"
	"image/color"
	"image/draw"
	"image/png"
	"math"
	"os"
	"path/filepath"
	"testing"

	"sutur/generator/internal/engine"
	"sutur/generator/internal/mushaf"
)

// shot is the viewport as it is seen.
func (p *page) shot() *image.RGBA {
	p.t.Helper()
	var out *image.RGBA
	p.must(func(ctx context.Context, _ string) error {
		im, err := p.tab.Screenshot(ctx)
		if err == nil {
			out = image.NewRGBA(im.Bounds())
			draw.Draw(out, out.Rect, im, im.Bounds().Min, draw.Src)
		}
		return err
	}, "")
	return out
}

// picture saves what is seen, in colour and in grey, for a person to look at: into the folder that
// the variable SUTUR_PICTURES names, if it names one.
func picture(t testing.TB, name string, im *image.RGBA) {
	t.Helper()
	dir := os.Getenv("SUTUR_PICTURES")
	if dir == "" {
		return
	}
	grey := image.NewGray(im.Rect)
	draw.Draw(grey, grey.Rect, im, im.Rect.Min, draw.Src)
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

// still removes what moves by itself or in its own time, such as a scroll bar that fades, once the
// fonts are there.
func (p *page) still() {
	p.t.Helper()
	eval[any](p, `document.fonts.ready.then(() => {
		const still = globalThis.still ??= new CSSStyleSheet();
		if (document.adoptedStyleSheets.includes(still)) return;
		still.replaceSync("* { scrollbar-width: none; caret-color: transparent !important; transition: none !important; }");
		document.adoptedStyleSheets = [...document.adoptedStyleSheets, still];
	})`)
}

// settled waits until nothing is laid out or painted any more: two pictures in a row are alike.
func (p *page) settled() *image.RGBA {
	p.t.Helper()
	p.still()
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

// same compares the bytes of two pictures of one kind.
func same(a, b *image.RGBA) bool { return a.Rect == b.Rect && bytes.Equal(a.Pix, b.Pix) }

// box is a rectangle in CSS pixels of the viewport.
type box struct{ L, T, R, B float64 }

// inset takes x off its sides and keeps its height.
func (b box) inset(x float64) box { return box{b.L + x, b.T, b.R - x, b.B} }

// pixels are the device pixels that lie wholly in a box.
func (b box) pixels() image.Rectangle {
	up := func(x float64) int { return int(math.Ceil(x*engine.Scale - 1e-3)) }
	down := func(x float64) int { return int(math.Floor(x*engine.Scale + 1e-3)) }
	return image.Rect(up(b.L), up(b.T), max(up(b.L), down(b.R)), max(up(b.T), down(b.B)))
}

// boxes brings a word into the middle of the screen and gives the box of each of its letters with
// all that stands on it. WebKit gives the whole of a joined lam and alif to the lam; then the alif
// is the half on the left, as elsewhere.
func (p *page) boxes(word string, ends []int) []box {
	p.t.Helper()
	p.still()
	list, _ := json.Marshal(ends)
	out := eval[[]box](p, fmt.Sprintf(`(() => {
		const w = document.querySelector(%q), ends = %s;
		w.scrollIntoView({ block: "center", behavior: "instant" });
		return ends.map((to, i) => {
			const r = new Range();
			r.setStart(w.firstChild, i ? ends[i - 1] : 0);
			r.setEnd(w.firstChild, to);
			const b = r.getBoundingClientRect();
			return { L: b.left, T: b.top, R: b.right, B: b.bottom };
		});
	})()`, word, list))
	for i, b := range out {
		if lam := i - 1; i > 0 && b.R-b.L == 0 && b.R == out[lam].L {
			out[i].R = (out[lam].L + out[lam].R) / 2
			out[lam].L = out[i].R
			b = out[i]
		}
		if b.R-b.L < 2 || b.B-b.T < 10 {
			p.t.Fatalf("letter %d of %s has the box %+v", i+1, word, b)
		}
	}
	return out
}

// onLines is the selector of a word of the lines.
func onLines(a letterAt) string {
	return fmt.Sprintf(`[data-t=passage] .w[data-v="%d"][data-w="%d"]`, a.v, a.w)
}

// ends is where each letter of a word ends, in UTF-16 units, with the signs that belong to no
// letter.
func ends(text *mushaf.Text, v, w int) []int {
	word := text.Verses[v].Words[w]
	var out []int
	for i := range word.Letters {
		out = append(out, letter(text, v, w, i).to)
	}
	out[len(out)-1] = len([]rune(text.Verses[v].Text[word.Start:word.End]))
	return out
}

// colour resolves a CSS colour of the page.
func (p *page) colour(css string) color.RGBA {
	p.t.Helper()
	c := eval[[4]uint8](p, fmt.Sprintf(`(() => {
		const e = document.body.appendChild(document.createElement("i"));
		e.style.color = %q;
		const pen = new OffscreenCanvas(1, 1).getContext("2d");
		pen.fillStyle = getComputedStyle(e).color;
		pen.fillRect(0, 0, 1, 1);
		e.remove();
		return [...pen.getImageData(0, 0, 1, 1).data];
	})()`, css))
	if c[3] != 255 {
		p.t.Fatalf("%s is no colour: %v", css, c)
	}
	return color.RGBA{c[0], c[1], c[2], c[3]}
}

// near is how far a channel may be off: less than half a step between any two colours that are told
// apart here, and more than colour management does.
const near = 20

// count is how many pixels of a rectangle have a colour. The middle of a stroke has it wholly; its
// soft edges do not count.
func count(im *image.RGBA, r image.Rectangle, c color.RGBA) int {
	n := 0
	r = r.Intersect(im.Bounds())
	for y := r.Min.Y; y < r.Max.Y; y++ {
		for x := r.Min.X; x < r.Max.X; x++ {
			a := im.RGBAAt(x, y)
			if off(a.R, c.R) <= near && off(a.G, c.G) <= near && off(a.B, c.B) <= near {
				n++
			}
		}
	}
	return n
}

func off(a, b uint8) int { return max(int(a)-int(b), int(b)-int(a)) }
