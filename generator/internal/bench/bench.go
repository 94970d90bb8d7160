// Package bench measures the project by stage and prints one table: the build beside a general
// static site generator, the engine beside its floor, bytes beside those of the bare text, and the
// built site in a browser at a quarter of the machine's speed.
//
// Times come from the benchmarks of the stages, whose test programs are compiled once and run from
// here; what is compared runs by turns, so that a machine that is busy for a while is so for both.
// A stage that fails is a row that says so, and the others go on.
package bench

import (
	"context"
	"fmt"
	"io"
	"os"
	"slices"
	"strings"
	"time"
)

// Row is one line of the table.
type Row struct {
	What   string
	Unit   string  // "ms", "bytes", or of what it is a count
	Median float64 // the value itself where it is exact
	Worst  float64 // 0 where it is exact
	Runs   int     // 0 where it is exact
	Most   float64 // the budget; 0 for none
	Whole  bool    // the budget holds for the worst too, not for the median alone
	Note   string
	Failed error // what kept it from being measured
}

// Stage is a part of the table.
type Stage struct {
	Name    string
	measure func(*run) []Row
}

// Stages in the order of the table.
var Stages = []Stage{
	{"build", builds},
	{"engine", engine},
	{"index", index},
	{"bytes", sizes},
	{"phone", phone},
	{"memory", memory},
}

// Names lists the stages.
func Names() []string {
	var names []string
	for _, s := range Stages {
		names = append(names, s.Name)
	}
	return names
}

// run is what the stages work with.
type run struct {
	ctx  context.Context
	root string // the project's folder
	temp string // a folder that is removed in the end
	say  func(format string, a ...any)
	// The test programs that were made, by package.
	compiled map[string]*tests
}

// Run measures the named stages of the project at root, all where none is named, and writes the
// table to out and what is being done to progress. It fails if a row could not be measured, after
// the table has been written.
func Run(ctx context.Context, root string, names []string, out, progress io.Writer) error {
	temp, err := os.MkdirTemp("", "sutur-bench-")
	if err != nil {
		return fmt.Errorf("make a folder for the programs to measure: %w", err)
	}
	defer os.RemoveAll(temp)
	say := func(format string, a ...any) { fmt.Fprintf(progress, format+"\n", a...) }
	r := &run{ctx, root, temp, say, map[string]*tests{}}
	began, load := time.Now(), loadAverage()
	failed := 0
	var table [][]Row
	var headings []string
	for _, s := range Stages {
		if len(names) > 0 && !slices.Contains(names, s.Name) {
			continue
		}
		if ctx.Err() != nil {
			return ctx.Err()
		}
		r.say("measuring: %s", s.Name)
		rows := s.measure(r)
		for _, row := range rows {
			if row.Failed != nil {
				failed++
			}
		}
		table, headings = append(table, rows), append(headings, s.Name)
	}
	fmt.Fprintln(out, machine(ctx))
	fmt.Fprintf(out, "load average of the last minute: %s at the start, %s at the end, %s later\n\n", load, loadAverage(), time.Since(began).Round(time.Second))
	if err := Print(out, headings, table); err != nil {
		return fmt.Errorf("write the table: %w", err)
	}
	if failed > 0 {
		return fmt.Errorf("not measured: %d of the rows above", failed)
	}
	return nil
}

// loadAverage is that of the last minute, where the system tells it.
func loadAverage() string {
	data, err := os.ReadFile("/proc/loadavg")
	if first, _, ok := strings.Cut(string(data), " "); err == nil && ok {
		return first
	}
	return "unknown"
}
