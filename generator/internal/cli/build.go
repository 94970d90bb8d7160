package cli

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"time"

	"sutur/generator/internal/build"
	"sutur/generator/internal/bundle"
	"sutur/generator/internal/diag"
	"sutur/generator/internal/site"
)

func runBuild(e *env, args []string) error {
	fs := flag.NewFlagSet("build", flag.ContinueOnError)
	out := fs.String("out", filepath.Join(e.root, build.SiteDir), "write the site to `DIR`")
	rest, err := parse(fs, args)
	if err != nil {
		return err
	}
	if err := none("build", rest); err != nil {
		return err
	}
	_, err = e.build(*out)
	return err
}

// build makes the site and writes it to out; it prints diagnostics, or what was built.
func (e *env) build(out string) ([]bundle.File, error) {
	start := time.Now()
	files, ds := build.Site(e.root)
	if err := diag.Print(e.stderr, ds); err != nil {
		return nil, err
	}
	if diag.HasError(ds) {
		return nil, errContent
	}
	changed, err := site.Write(out, files)
	if err != nil {
		return nil, err
	}
	did := "built"
	if !changed {
		did = "unchanged, checked"
	}
	took := time.Since(start)
	size := site.Measure(files)
	fmt.Fprintf(e.stdout, "%s %s in %.2f s: %d files, %s over the wire, first open %s\n",
		shown(out), did, took.Seconds(), len(files),
		budget(size.All, site.BudgetAll), budget(size.First, site.BudgetFirst))
	return files, nil
}

// shown shortens a path below the working directory.
func shown(path string) string {
	if wd, err := os.Getwd(); err == nil {
		if rel, err := filepath.Rel(wd, path); err == nil && filepath.IsLocal(rel) {
			return rel
		}
	}
	return path
}

// budget shows a size in kilobytes (1000 bytes) and, when it is too large, by what measure.
func budget(size, most int) string {
	s := fmt.Sprintf("%d KB", (size+999)/1000)
	if size > most {
		s += fmt.Sprintf(" (over the budget of %d KB)", most/1000)
	}
	return s
}
