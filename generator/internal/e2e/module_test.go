package e2e

import (
	"path/filepath"
	"testing"

	"github.com/evanw/esbuild/pkg/api"

	"sutur/generator/internal/build"
)

// bundled makes source, TypeScript that imports the app's modules as a file of site-src/app would,
// into one expression.
func bundled(t testing.TB, source string) string {
	t.Helper()
	abs, err := filepath.Abs(root)
	if err != nil {
		t.Fatal(err)
	}
	r := api.Build(api.BuildOptions{
		Stdin:  &api.StdinOptions{Contents: source, ResolveDir: filepath.Join(abs, build.SourceDir, "app"), Loader: api.LoaderTS},
		Bundle: true, Format: api.FormatIIFE, Write: false,
	})
	if len(r.Errors) > 0 {
		t.Fatal(r.Errors)
	}
	return "(() => { " + string(r.OutputFiles[0].Contents) + " return 0; })()"
}

// modulePage opens a page of the built site that shows no screen of the app, and runs source in it
// (see bundled).
func modulePage(t testing.TB, source string) *page {
	t.Helper()
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.open(s.address + "about.html")
	eval[any](p, bundled(t, source))
	return p
}
