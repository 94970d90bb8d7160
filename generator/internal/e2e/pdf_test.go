package e2e

import (
	"bytes"
	"compress/zlib"
	"encoding/hex"
	"fmt"
	"io"
	"regexp"
	"strconv"
	"strings"
)

// A pdf is what a test wants to know of a printed document. The reader below reads as much of PDF
// (ISO 32000-1) as Chromium writes: objects in the body or in object streams, Flate streams, text
// shown by Tj and TJ in fonts with two-byte codes, and in Type 3 fonts, which have one-byte codes.
// Anything else it meets there is an error, not a guess.
type pdf struct {
	objects map[int]pdfObject
	Pages   []pdfPage
	Fonts   map[string]bool // by BaseFont without the subset's tag: whether the font's file is in the document
}

type pdfObject struct {
	dict   string
	stream []byte // not yet unpacked
}

type pdfPage struct {
	Width, Height float64 // points
	Glyphs        []pdfGlyph
}

// A pdfGlyph is one glyph shown: where its origin stands, in points from the page's lower left
// corner, and what of the page was left unclipped there.
type pdfGlyph struct {
	Font string
	Code int
	Size float64
	X, Y float64
	Ink  [3]float64 // red, green, blue, 0 to 1
	Clip [4]float64 // left, bottom, right, top
}

var (
	pdfStart  = regexp.MustCompile(`(\d+) 0 obj\s`)
	pdfLength = regexp.MustCompile(`/Length (\d+)(?: \d+ R)?`)
	pdfRef    = regexp.MustCompile(`(\d+) 0 R`)
)

func readPDF(data []byte) (*pdf, error) {
	if !bytes.HasPrefix(data, []byte("%PDF-")) {
		return nil, fmt.Errorf("no PDF: it begins with %.20q", data)
	}
	p := &pdf{objects: map[int]pdfObject{}, Fonts: map[string]bool{}}
	for at := 0; ; {
		m := pdfStart.FindSubmatchIndex(data[at:])
		if m == nil {
			break
		}
		n, _ := strconv.Atoi(string(data[at+m[2] : at+m[3]]))
		body := data[at+m[1]:]
		end := bytes.Index(body, []byte("endobj"))
		if end < 0 {
			return nil, fmt.Errorf("object %d has no end", n)
		}
		o := pdfObject{dict: string(body[:end])}
		if s := bytes.Index(body[:end], []byte("stream\n")); s >= 0 {
			o.dict = string(body[:s])
			l := pdfLength.FindStringSubmatch(o.dict)
			if l == nil || strings.HasSuffix(l[0], "R") {
				return nil, fmt.Errorf("object %d: the stream's length is not given directly: %.200q", n, o.dict)
			}
			size, _ := strconv.Atoi(l[1])
			o.stream = body[s+len("stream\n"):][:size]
			end = s + len("stream\n") + size
		}
		p.objects[n] = o
		at += m[1] + end
	}
	for _, o := range p.objects {
		if strings.Contains(o.dict, "/Type /ObjStm") {
			if err := p.unpackObjects(o); err != nil {
				return nil, err
			}
		}
	}
	return p, p.read()
}

func (o pdfObject) data() ([]byte, error) {
	if !strings.Contains(o.dict, "/FlateDecode") {
		return o.stream, nil
	}
	r, err := zlib.NewReader(bytes.NewReader(o.stream))
	if err != nil {
		return nil, fmt.Errorf("unpack a stream: %w", err)
	}
	return io.ReadAll(r)
}

// unpackObjects reads the objects of an object stream (7.5.7).
func (p *pdf) unpackObjects(o pdfObject) error {
	data, err := o.data()
	if err != nil {
		return err
	}
	first, err1 := strconv.Atoi(entry(o.dict, "First"))
	count, err2 := strconv.Atoi(entry(o.dict, "N"))
	if err1 != nil || err2 != nil || first > len(data) {
		return fmt.Errorf("object stream: %.200q", o.dict)
	}
	head := strings.Fields(string(data[:first]))
	for i := range count {
		n, _ := strconv.Atoi(head[2*i])
		from, _ := strconv.Atoi(head[2*i+1])
		to := len(data) - first
		if i+1 < count {
			to, _ = strconv.Atoi(head[2*i+3])
		}
		p.objects[n] = pdfObject{dict: string(data[first+from : first+to])}
	}
	return nil
}

// entry returns what follows a name in a dictionary, up to the next name or line's end.
func entry(dict, name string) string {
	_, after, ok := strings.Cut(dict, "/"+name+" ")
	if !ok {
		return ""
	}
	if i := strings.IndexAny(after, "/\n>"); i > 0 {
		after = after[:i]
	}
	return strings.TrimSpace(after)
}

func (p *pdf) ref(dict, name string) (pdfObject, bool) {
	m := pdfRef.FindStringSubmatch(entry(dict, name))
	if m == nil {
		return pdfObject{}, false
	}
	n, _ := strconv.Atoi(m[1])
	o, ok := p.objects[n]
	return o, ok
}

func (p *pdf) read() error {
	for _, o := range p.objects {
		if strings.Contains(o.dict, "/Type /Catalog") {
			root, ok := p.ref(o.dict, "Pages")
			if !ok {
				return fmt.Errorf("the catalogue names no pages: %.200q", o.dict)
			}
			return p.tree(root)
		}
	}
	return fmt.Errorf("there is no catalogue among %d objects", len(p.objects))
}

func (p *pdf) tree(o pdfObject) error {
	if !strings.Contains(o.dict, "/Kids") {
		return p.page(o)
	}
	for _, m := range pdfRef.FindAllStringSubmatch(entry(o.dict, "Kids"), -1) {
		n, _ := strconv.Atoi(m[1])
		if err := p.tree(p.objects[n]); err != nil {
			return err
		}
	}
	return nil
}

var (
	pdfFont     = regexp.MustCompile(`/(F\d+) (\d+) 0 R`)
	pdfBaseFont = regexp.MustCompile(`/BaseFont /(?:[A-Z]{6}\+)?([^\s/<>]+)`)
	pdfFontName = regexp.MustCompile(`/FontName /(?:[A-Z]{6}\+)?([^\s/<>]+)`)
	pdfDrawn    = regexp.MustCompile(`/Widths \[([^\]]*)\]`)
)

func (p *pdf) page(o pdfObject) error {
	var pg pdfPage
	var x, y float64
	if _, err := fmt.Sscanf(entry(o.dict, "MediaBox"), "[%g %g %g %g]", &x, &y, &pg.Width, &pg.Height); err != nil {
		return fmt.Errorf("page size in %.300q: %w", o.dict, err)
	}
	fonts := map[string]pdfFace{}
	for _, m := range pdfFont.FindAllStringSubmatch(o.dict, -1) {
		n, _ := strconv.Atoi(m[2])
		f := p.objects[n].dict
		var name string
		if m := pdfBaseFont.FindStringSubmatch(f); m != nil {
			name = m[1]
		}
		face := pdfFace{name: name, bytes: 2}
		if d, ok := p.ref(f, "DescendantFonts"); ok {
			face.width, face.other = widths(d.dict)
		} else if strings.Contains(f, "/Subtype /Type3") {
			face.bytes, face.width = 1, drawnWidths(f)
			if d, ok := p.ref(f, "FontDescriptor"); ok {
				if m := pdfFontName.FindStringSubmatch(d.dict); m != nil {
					name, face.name = m[1], m[1]
				}
			}
		}
		fonts[m[1]] = face
		p.Fonts[name] = p.embedded(f)
	}
	content, ok := p.ref(o.dict, "Contents")
	if !ok {
		return fmt.Errorf("a page has no contents: %.300q", o.dict)
	}
	data, err := content.data()
	if err != nil {
		return err
	}
	pg.Glyphs, err = glyphs(string(data), fonts, [4]float64{0, 0, pg.Width, pg.Height})
	p.Pages = append(p.Pages, pg)
	return err
}

func (p *pdf) embedded(font string) bool {
	if strings.Contains(font, "/Subtype /Type3") {
		return true // its glyphs are drawings in the document itself
	}
	if d, ok := p.ref(font, "DescendantFonts"); ok {
		font = d.dict
	}
	d, ok := p.ref(font, "FontDescriptor")
	return ok && strings.Contains(d.dict, "/FontFile")
}

// A pdfFace is a font as a page uses it: the advance of its glyphs in thousandths of the size, and
// of those not listed.
type pdfFace struct {
	name  string
	bytes int // of a code
	width map[int]float64
	other float64
}

var pdfWidths = regexp.MustCompile(`/W \[([^/]*)\]`)

// widths reads /W and /DW of a font with two-byte codes (9.7.4.3).
func widths(dict string) (map[int]float64, float64) {
	list := map[int]float64{}
	other, err := strconv.ParseFloat(entry(dict, "DW"), 64)
	if err != nil {
		other = 1000
	}
	m := pdfWidths.FindStringSubmatch(dict)
	if m == nil {
		return list, other
	}
	f := strings.Fields(strings.NewReplacer("[", " [ ", "]", " ] ").Replace(m[1]))
	num := func(i int) float64 { v, _ := strconv.ParseFloat(f[i], 64); return v }
	for i := 0; i+2 < len(f); {
		if f[i+1] == "[" {
			code := int(num(i))
			for i += 2; i < len(f) && f[i] != "]"; i++ {
				list[code] = num(i)
				code++
			}
			i++
			continue
		}
		for code := int(num(i)); code <= int(num(i+1)); code++ {
			list[code] = num(i + 2)
		}
		i += 3
	}
	return list, other
}

// drawnWidths reads the advances of a Type 3 font (9.6.5), whose glyphs have units of their own.
func drawnWidths(dict string) map[int]float64 {
	list := map[int]float64{}
	var unit float64
	fmt.Sscanf(entry(dict, "FontMatrix"), "[%g", &unit)
	first, _ := strconv.Atoi(entry(dict, "FirstChar"))
	if m := pdfDrawn.FindStringSubmatch(dict); m != nil {
		for i, s := range strings.Fields(m[1]) {
			w, _ := strconv.ParseFloat(s, 64)
			list[first+i] = w * unit * 1000
		}
	}
	return list
}

type matrix [6]float64

func (m matrix) then(n matrix) matrix { // m first, as in "m cm"
	return matrix{
		m[0]*n[0] + m[1]*n[2], m[0]*n[1] + m[1]*n[3],
		m[2]*n[0] + m[3]*n[2], m[2]*n[1] + m[3]*n[3],
		m[4]*n[0] + m[5]*n[2] + n[4], m[4]*n[1] + m[5]*n[3] + n[5],
	}
}

type pdfState struct {
	m    matrix
	ink  [3]float64
	clip [4]float64
}

// glyphs runs a page's content as far as it places text.
func glyphs(content string, fonts map[string]pdfFace, box [4]float64) ([]pdfGlyph, error) {
	now := pdfState{m: matrix{1, 0, 0, 1, 0, 0}, clip: box}
	var stack []pdfState
	var args []string
	var line, text matrix // Td counts from the line's start, which showing text does not move
	var font string
	var size float64
	var rect [4]float64
	var out []pdfGlyph
	num := func(i int) float64 {
		if i >= len(args) {
			return 0
		}
		v, _ := strconv.ParseFloat(args[i], 64)
		return v
	}
	all := func() (m matrix) {
		for i := range m {
			m[i] = num(i)
		}
		return m
	}
	show := func(s string) error {
		face := fonts[font]
		code, err := hex.DecodeString(strings.Trim(s, "<>"))
		if err != nil || face.bytes == 0 || len(code)%face.bytes != 0 {
			return fmt.Errorf("text %.60q is not in codes of %d bytes", s, face.bytes)
		}
		for i := 0; i < len(code); i += face.bytes {
			at, c := text.then(now.m), int(code[i])
			if face.bytes == 2 {
				c = c<<8 | int(code[i+1])
			}
			out = append(out, pdfGlyph{face.name, c, size * at[0], at[4], at[5], now.ink, now.clip})
			w, ok := face.width[c]
			if !ok {
				w = face.other
			}
			text = matrix{1, 0, 0, 1, w / 1000 * size, 0}.then(text)
		}
		return nil
	}
	for _, tok := range strings.Fields(content) {
		c := tok[0]
		if c == '<' && !strings.HasPrefix(tok, "<<") || c == '/' || c == '-' || c == '.' || c >= '0' && c <= '9' {
			args = append(args, tok)
			continue
		}
		switch tok {
		case "q":
			stack = append(stack, now)
		case "Q":
			if len(stack) == 0 {
				return nil, fmt.Errorf("Q without q")
			}
			now, stack = stack[len(stack)-1], stack[:len(stack)-1]
		case "cm":
			now.m = all().then(now.m)
		case "rg":
			now.ink = [3]float64{num(0), num(1), num(2)}
		case "re":
			a := matrix{1, 0, 0, 1, num(0), num(1)}.then(now.m)
			b := matrix{1, 0, 0, 1, num(0) + num(2), num(1) + num(3)}.then(now.m)
			rect = [4]float64{min(a[4], b[4]), min(a[5], b[5]), max(a[4], b[4]), max(a[5], b[5])}
		case "W", "W*":
			now.clip = [4]float64{max(now.clip[0], rect[0]), max(now.clip[1], rect[1]), min(now.clip[2], rect[2]), min(now.clip[3], rect[3])}
		case "BT":
			line = matrix{1, 0, 0, 1, 0, 0}
			text = line
		case "Tm":
			line = all()
			text = line
		case "Td":
			line = matrix{1, 0, 0, 1, num(0), num(1)}.then(line)
			text = line
		case "Tf":
			font, size = strings.TrimPrefix(args[0], "/"), num(1)
		case "Tj":
			if err := show(args[len(args)-1]); err != nil {
				return nil, err
			}
		case "TJ", "'", "\"", "TD", "T*", "Do":
			return nil, fmt.Errorf("operator %s is not read here", tok)
		}
		args = args[:0]
	}
	return out, nil
}
