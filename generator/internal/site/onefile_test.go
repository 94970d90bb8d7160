package site

import (
	"strings"
	"testing"

	"sutur/generator/internal/bundle"
	"sutur/generator/internal/diag"
)

func TestAddressWithin(t *testing.T) {
	there := map[string]bool{"about.html": true, "lessons/ra.html": true, "licences/A-1.0.txt": true}
	for _, c := range []struct{ page, to, want string }{
		{"lessons/ra.html", "../index.html", "#/today"},
		{"lessons/ra.html", "../index.html#/lines?rule=ra&from=78:1", "#/lines?rule=ra&from=78:1"},
		{"lessons/ra.html", "#try", "#/read?page=lessons%2Fra.html&at=try"},
		{"lessons/ra.html", "../about.html#cautions", "#/read?page=about.html&at=cautions"},
		{"about.html", "lessons/ra.html", "#/read?page=lessons%2Fra.html"},
		{"about.html", "licences/A-1.0.txt", "#/read?page=licences%2FA-1.0.txt"},
		{"about.html", "lessons/gone.html", ""},
		{"about.html", "one-file/sutur.html", ""},
		{"about.html", "https://host/", ""},
	} {
		if got := addressWithin(c.page, c.to, there); got != c.want {
			t.Errorf("%s to %s: %q, want %q", c.page, c.to, got, c.want)
		}
	}
}

// TestOneFileRefuses: what cannot stand in the one file stops the build.
func TestOneFileRefuses(t *testing.T) {
	for _, data := range []string{"a</script>", "'<SCRIPT'", "'<!--'", "a\rb", "a\x00b"} {
		if err := inlined([]byte(data), "script"); err == nil {
			t.Errorf("%q is taken", data)
		}
	}
	if err := inlined([]byte("a<b&&c>d // -->"), "script"); err != nil {
		t.Error(err)
	}
	s := newSource(t, map[string]string{"pages/about.html": `<html><head>{{template "policy"}}</head><body><main><a href="gone.html">Gone</a></main></body></html>`})
	if files, ds := Make(s); files != nil || !diag.HasError(ds) || !strings.Contains(ds[0].String(), `about.html links to "gone.html", which is not in the one file`) {
		t.Errorf("%d files, %v", len(files), ds)
	}
	two := wholeParts{styles: []bundle.File{{Name: "main", Data: []byte("</style>")}}}
	if _, ds := (&app{}).oneFile(nil, Page{}, two, nil); !diag.HasError(ds) {
		t.Error("a style sheet that ends its element is taken")
	}
}
