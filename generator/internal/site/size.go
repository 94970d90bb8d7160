package site

import (
	"bytes"
	"path"
	"regexp"
	"strings"

	"github.com/klauspost/compress/gzip"

	"sutur/generator/internal/bundle"
)

// Size is what goes over the wire, in bytes: files that are not compressed in themselves count as a
// host sends them, in gzip form at the usual level 6.
type Size struct {
	First int // first open of the app: page, script, style, font, icons, catalogue, manifest, service worker
	All   int // everything, as the service worker keeps it, without the one file
	Text  int // the surahs' files: text and events
}

// Budgets, in bytes, and that of the surahs' files together as a multiple of the text alone in gzip
// form.
const (
	BudgetFirst = 150_000
	BudgetAll   = 1_000_000
	BudgetText  = 1.5
)

// Measure returns the size of a site.
func Measure(files []bundle.File) Size {
	wire := make([]int, len(files))
	each(len(files), func() func(int) {
		var buf bytes.Buffer
		return func(i int) { wire[i] = wireSize(&buf, files[i]) }
	})
	first := firstOpen(files)
	var s Size
	for i, f := range files {
		if Offline(f.Name) {
			s.All += wire[i]
		}
		if first[f.Name] {
			s.First += wire[i]
		}
		if surahFile.MatchString(f.Name) {
			s.Text += wire[i]
		}
	}
	return s
}

// later is what is asked for only when it is needed: a script's import, and the styles of screens
// that are fetched later, which the page names for the script.
var later = regexp.MustCompile(`import\("[^"]*"\)|data-(?:paper|later|shared)=("[^"]*"|[^ >]*)`)

var surahFile = regexp.MustCompile(`^data/s\d{3}\.`)

// firstOpen returns the names of the files that opening index.html loads: those it names, and those
// that the style sheet and the script name, but not pages it links to and parts of the script that
// are needed later.
func firstOpen(files []bundle.File) map[string]bool {
	names := map[string]bool{"index.html": true, "sw.js": true}
	var text []byte
	for _, f := range files {
		switch {
		case strings.HasPrefix(f.Name, "assets/style."):
			text = append(text, f.Data...)
		case f.Name == "index.html", strings.HasPrefix(f.Name, "assets/main."):
			text = append(text, later.ReplaceAll(f.Data, nil)...)
		}
	}
	for _, f := range files {
		if path.Ext(f.Name) != ".html" && bytes.Contains(text, []byte(path.Base(f.Name))) {
			names[f.Name] = true
		}
	}
	return names
}

// hostLevel is the level of our compressor that comes nearest to what hosts send, gzip's usual level
// 6: on all pages, scripts and styles together it gives 0.1 percent more.
const hostLevel = 8

func wireSize(buf *bytes.Buffer, f bundle.File) int {
	switch path.Ext(f.Name) {
	case ".gz", ".woff2", ".png":
		return len(f.Data)
	}
	buf.Reset()
	w, err := gzip.NewWriterLevel(buf, hostLevel)
	if err != nil {
		panic(err) // the level is a constant
	}
	w.Write(f.Data) // a buffer takes everything
	w.Close()
	return buf.Len()
}
