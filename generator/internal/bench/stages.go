package bench

import (
	"bytes"
	"errors"
	"fmt"

	"sutur/generator/internal/build"
	"sutur/generator/internal/diag"
	"sutur/generator/internal/site"
)

// Budgets of time, in milliseconds.
const (
	mostBuild  = 2000
	mostEngine = 150
	mostTap    = 100 // also in the worst of twenty
	mostRank   = 50
	mostFirst  = 100 // the first ranking of a page
)

// rounds of what runs by turns.
const rounds = 7

// engine compares the engine with the least that any reader of the text does.
func engine(r *run) []Row {
	const what = "engine, all verses, all rules, one core"
	t, err := r.compile("recite")
	if err != nil {
		return failedRow(what, err)
	}
	ms, err := t.turns(rounds, "10x", "WholeText", "Floor")
	if err != nil {
		return failedRow(what, err)
	}
	whole, floor := timed(what, ms[0]), timed("its floor: each rune decoded and looked up once", ms[1])
	whole.Most, whole.Note = mostEngine, fmt.Sprintf("%.1f times the floor, by turns with it", whole.Median/floor.Median)
	return []Row{whole, floor}
}

// index measures what the build does between the text and the files, and the ranking in Go.
func index(r *run) []Row {
	var rows []Row
	for _, x := range []struct{ pkg, bench, what string }{
		{"mushaf", "Load", "text: read, split into letters, digests checked"},
		{"passage", "Build", "index of passages, one core"},
		{"lesson", "Load", "lessons: read, checked by the engine"},
		{"plan", "Rank/usual", "ranking all passages in Go, one core"},
		{"plan", "Rank/shortened", "the same with shortened lines"},
	} {
		t, err := r.compile(x.pkg)
		if err != nil {
			rows = append(rows, failedRow(x.what, err)...)
			continue
		}
		ms, err := t.turns(rounds, "5x", x.bench)
		if err != nil {
			rows = append(rows, failedRow(x.what, err)...)
			continue
		}
		rows = append(rows, timed(x.what, ms[0]))
	}
	return rows
}

// sizes are bytes over the wire, beside those of the verses alone at gzip's best.
func sizes(r *run) []Row {
	const what = "first open, font included"
	files, ds := build.Site(r.root)
	if diag.HasError(ds) {
		return failedRow(what, errors.New(ds[0].String()))
	}
	bare, err := bareText(r.root)
	if err != nil {
		return failedRow(what, err)
	}
	s := site.Measure(files)
	row := func(what string, n, most int) Row {
		return Row{What: what, Unit: "bytes", Median: float64(n), Most: float64(most), Note: fmt.Sprintf("%.2f times the bare text", float64(n)/float64(bare))}
	}
	rows := []Row{
		row(what, s.First, site.BudgetFirst),
		row("everything, offline", s.All, site.BudgetAll),
		row("text with every place of every rule", s.Text, 0),
		{What: "the bare text, gzip -9", Unit: "bytes", Median: float64(bare)},
	}
	for _, f := range files {
		if f.Name == site.OneFile {
			rows = append(rows, row(f.Name+", as it is", len(f.Data), site.BudgetOneFile), row("the same, gzip -9", len(site.Compress(f.Data)), 0))
		}
	}
	return rows
}

// bareText is the size in gzip form of the verses alone, each on a line.
func bareText(root string) (int, error) {
	text, err := build.Text(root)
	if err != nil {
		return 0, err
	}
	var b bytes.Buffer
	for _, v := range text.Verses {
		fmt.Fprintln(&b, v.Text)
	}
	return len(site.Compress(b.Bytes())), nil
}
