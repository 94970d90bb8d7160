package bench

import (
	"fmt"
	"path/filepath"
)

// The general static site generator that stands beside the build: written in Go as it is, to be had
// as a module, in wide use, and a program that turns Markdown into pages and does little else, so
// that what the build takes longer is the engine, the index, the data files and the scripts. It is
// installed into a temporary folder and is no dependency of the project.
const (
	generalModule  = "github.com/gohugoio/hugo"
	generalVersion = "v0.160.0"
)

// builds compares the build with the general generator on as many pages of Markdown, by turns.
func builds(r *run) []Row {
	const what, other = "whole build, written", "a general static site generator (" + generalModule + ")"
	ours := filepath.Join(r.temp, "generator"+exe())
	if _, err := r.command(".", goTool(), "build", "-o", ours, "./generator"); err != nil {
		return failedRow(what, err)
	}
	out := filepath.Join(r.temp, "site")
	buildOurs := func() (float64, error) { return r.clock(ours, "build", "--out", out) }
	if _, err := buildOurs(); err != nil { // also warms it
		return failedRow(what, err)
	}
	pages, err := pagesIn(out)
	if err != nil {
		return failedRow(what, err)
	}
	general, sources, generalErr := r.general(pages)
	buildGeneral := func() (float64, error) {
		return r.clock(general, "--quiet", "--noBuildLock", "--source", sources, "--destination", filepath.Join(r.temp, "general-site"))
	}
	if generalErr == nil {
		generalErr = r.warm(buildGeneral, pages)
	}
	var a, b []float64
	for range rounds {
		ms, err := buildOurs()
		if err != nil {
			return failedRow(what, err)
		}
		a = append(a, ms)
		if generalErr == nil {
			ms, generalErr = buildGeneral()
			b = append(b, ms)
		}
	}
	own := timed(what, a)
	own.Most, own.Note = mostBuild, fmt.Sprintf("%d pages, and text, engine, index, scripts", pages)
	if generalErr != nil {
		return []Row{own, {What: other, Failed: fmt.Errorf("could not be had: %w", generalErr)}}
	}
	row := timed(other, b)
	row.Note = fmt.Sprintf("%s, by turns with it: as many pages of Markdown, and nothing else", generalVersion)
	return []Row{own, row}
}

// warm builds with the general generator once, and looks whether it made as many pages.
func (r *run) warm(build func() (float64, error), pages int) error {
	if _, err := build(); err != nil {
		return err
	}
	n, err := pagesIn(filepath.Join(r.temp, "general-site"))
	if err == nil && n != pages {
		err = fmt.Errorf("it made %d pages of %d", n, pages)
	}
	return err
}
