package bundle

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/evanw/esbuild/pkg/api"
)

// inOne has what the first open needs come in one file beside the entry's own. Without it, modules
// share a file where the same parts need them, and as there are many parts there are dozens of small
// files, each with an answer of its own on the wire and compressed alone. So every part that is
// fetched later is made to name all modules of the first open, which are there by then.
func inOne(o api.BuildOptions) api.Plugin {
	first, later := reach(o)
	const path, space = "all-of-the-first-open", "first"
	return api.Plugin{Name: path, Setup: func(b api.PluginBuild) {
		b.OnResolve(api.OnResolveOptions{Filter: "^" + path + "$"}, func(api.OnResolveArgs) (api.OnResolveResult, error) {
			return api.OnResolveResult{Path: path, Namespace: space, SideEffects: api.SideEffectsTrue}, nil
		})
		b.OnLoad(api.OnLoadOptions{Filter: ".*", Namespace: space}, func(api.OnLoadArgs) (api.OnLoadResult, error) {
			var list strings.Builder
			for _, f := range first {
				fmt.Fprintf(&list, "import %q;\n", f)
			}
			text := list.String()
			return api.OnLoadResult{Contents: &text, ResolveDir: o.AbsWorkingDir, Loader: api.LoaderJS}, nil
		})
		b.OnLoad(api.OnLoadOptions{Filter: `\.ts$`}, func(args api.OnLoadArgs) (api.OnLoadResult, error) {
			if !slices.Contains(later, args.Path) {
				return api.OnLoadResult{}, nil
			}
			source, err := os.ReadFile(args.Path)
			text := string(source) + fmt.Sprintf("\nimport %q;\n", path)
			return api.OnLoadResult{Contents: &text, Loader: api.LoaderTS}, err
		})
	}}
}

// reach returns the modules that the entry brings along, without the entry itself, and those that
// are fetched later: none where the build fails, which says so itself.
func reach(o api.BuildOptions) (first, later []string) {
	o.Metafile = true
	var meta struct {
		Inputs map[string]struct {
			Imports []struct{ Path, Kind string }
		}
	}
	if r := api.Build(o); len(r.Errors) > 0 || json.Unmarshal([]byte(r.Metafile), &meta) != nil {
		return nil, nil
	}
	seen := map[string]bool{}
	var visit func(string)
	visit = func(f string) {
		seen[f] = true
		for _, i := range meta.Inputs[f].Imports {
			if i.Kind == "import-statement" && !seen[i.Path] {
				visit(i.Path)
			}
		}
	}
	visit(o.EntryPoints[0])
	for f, input := range meta.Inputs {
		if seen[f] && f != o.EntryPoints[0] && filepath.Ext(f) != ".json" { // words go with their readers
			first = append(first, filepath.Join(o.AbsWorkingDir, f))
		}
		for _, i := range input.Imports {
			if i.Kind == "dynamic-import" {
				later = append(later, filepath.Join(o.AbsWorkingDir, i.Path))
			}
		}
	}
	slices.Sort(first)
	return first, later
}
