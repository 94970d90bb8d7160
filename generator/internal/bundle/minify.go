package bundle

import (
	"fmt"
	"path"

	"github.com/tdewolff/minify/v2"
	"github.com/tdewolff/minify/v2/html"
	"github.com/tdewolff/minify/v2/json"
	"github.com/tdewolff/minify/v2/svg"
)

// minifiers by extension. Pages keep their tags and quotes, so that what a validator or a reader of
// the source sees is ordinary HTML; gzip makes the difference in size vanish.
var minifiers = map[string]minify.Minifier{
	".html":        &html.Minifier{KeepDocumentTags: true, KeepEndTags: true, KeepQuotes: true, KeepDefaultAttrVals: true},
	".svg":         &svg.Minifier{},
	".json":        &json.Minifier{KeepNumbers: true},
	".webmanifest": &json.Minifier{KeepNumbers: true},
}

// Minify returns f in its short form if its kind is HTML, SVG or JSON, else f as it is. No letter
// of a text is changed: only runs of ASCII white space between elements and words are.
func Minify(f File) (File, error) {
	mini, ok := minifiers[path.Ext(f.Name)]
	if !ok {
		return f, nil
	}
	m := minify.New()
	m.Add("x", mini)
	short, err := m.Bytes("x", f.Data)
	if err != nil {
		return File{}, fmt.Errorf("minify %s: %w", f.Name, err)
	}
	return File{f.Name, short}, nil
}
