package bundle

import (
	"os"
	"path/filepath"
	"strings"

	"github.com/evanw/esbuild/pkg/api"

	"sutur/generator/internal/diag"
)

// InPlace is the end of the name of a module that takes, in the one file, the place of the module
// without it in its name: pages.one.ts that of pages.ts.
const InPlace = ".one.ts"

// InsideSource is the style sheet of the pages that the one file shows, after StyleSource.
const InsideSource = "style/one-file.css"

// WholeScript bundles entry with all that it imports, also what is imported only when it is needed,
// into one script that asks for nothing.
func WholeScript(dir, entry string) ([]byte, []diag.Diagnostic) {
	o := whole(options(dir))
	o.EntryPoints = []string{entry}
	o.Plugins = []api.Plugin{inPlace()}
	// Modules are strict, and a plain script is not. What a plugin has found has no tsconfig.json of its
	// own, so all have the same one; else it depends on who is first to ask for a module.
	o.Banner = map[string]string{"js": `"use strict";`}
	o.TsconfigRaw = `{"compilerOptions":{"verbatimModuleSyntax":true}}`
	return only(run(dir, o))
}

// WholeStyle is Style with fonts and pictures within it.
func WholeStyle(dir, entry, more string) ([]byte, []diag.Diagnostic) {
	o := whole(styleOptions(dir, entry, more))
	return only(run(dir, o))
}

func whole(o api.BuildOptions) api.BuildOptions {
	o.Loader = map[string]api.Loader{".woff2": api.LoaderDataURL, ".svg": api.LoaderDataURL, ".png": api.LoaderDataURL}
	return o
}

func only(out Output, ds []diag.Diagnostic) ([]byte, []diag.Diagnostic) {
	if diag.HasError(ds) {
		return nil, ds
	}
	return out.Files[0].Data, ds
}

// inPlace finds the modules that take the place of others.
func inPlace() api.Plugin {
	return api.Plugin{Name: "in-place", Setup: func(b api.PluginBuild) {
		b.OnResolve(api.OnResolveOptions{Filter: `^\.{1,2}/.*\.ts$`}, func(args api.OnResolveArgs) (api.OnResolveResult, error) {
			other := filepath.Join(args.ResolveDir, strings.TrimSuffix(args.Path, ".ts")+InPlace)
			if _, err := os.Stat(other); err != nil {
				return api.OnResolveResult{}, nil // as it is; where it is missing, esbuild says so
			}
			return api.OnResolveResult{Path: other}, nil
		})
	}}
}
