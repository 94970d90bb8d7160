package bench

import (
	"cmp"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
)

// goTool is the Go command that make uses.
func goTool() string { return cmp.Or(os.Getenv("GO"), "go") }

// command runs a program in a folder below the project's and returns what it prints. Its error holds
// the first line that says what failed.
func (r *run) command(dir, name string, args ...string) (string, error) {
	c := exec.CommandContext(r.ctx, name, args...)
	c.Dir = filepath.Join(r.root, dir)
	out, err := c.CombinedOutput()
	if err != nil {
		return "", fmt.Errorf("%s: %w: %s", filepath.Base(name), err, complaint(string(out)))
	}
	return string(out), nil
}

// complaint is the line of a failed test's output that says most: the first below "--- FAIL", else
// the last that is not empty.
func complaint(out string) string {
	lines := strings.Split(strings.TrimSpace(out), "\n")
	if i := slices.IndexFunc(lines, func(l string) bool { return strings.HasPrefix(l, "--- FAIL") }); i >= 0 && i+1 < len(lines) {
		return lines[i+1]
	}
	return lines[len(lines)-1]
}

// tests is the compiled test program of a package below generator/internal.
type tests struct {
	r    *run
	dir  string
	file string
}

// compile makes the test program of a package, once.
func (r *run) compile(pkg string) (*tests, error) {
	if t := r.compiled[pkg]; t != nil {
		return t, nil
	}
	t := &tests{r, "generator/internal/" + pkg, filepath.Join(r.temp, pkg+".test")}
	if _, err := r.command(t.dir, goTool(), "test", "-c", "-o", t.file, "."); err != nil {
		return nil, err
	}
	r.compiled[pkg] = t
	return t, nil
}

// bench runs one benchmark, or one of its parts after a slash, for so long, such as 20x or 1s.
func (t *tests) bench(name, long string, more ...string) (Result, error) {
	parts := strings.Split("Benchmark"+name, "/")
	for i, p := range parts {
		parts[i] = "^" + p + "$"
	}
	args := append([]string{"-test.run=^$", "-test.bench=" + strings.Join(parts, "/"), "-test.benchtime=" + long, "-test.timeout=20m"}, more...)
	out, err := t.r.command(t.dir, t.file, args...)
	if err != nil {
		return Result{}, fmt.Errorf("Benchmark%s: %w", name, err)
	}
	if got := Parse(out)[name]; len(got) == 1 {
		return got[0], nil
	}
	return Result{}, fmt.Errorf("Benchmark%s printed no result", name)
}

// turns runs benchmarks by turns on one core, so many rounds, and returns the milliseconds of each
// round.
func (t *tests) turns(rounds int, long string, names ...string) ([][]float64, error) {
	t.r.say("  %s of %s", strings.Join(names, " and "), filepath.Base(t.dir))
	ms := make([][]float64, len(names))
	for range rounds {
		for i, name := range names {
			got, err := t.bench(name, long, "-test.cpu=1")
			if err != nil {
				return nil, err
			}
			ms[i] = append(ms[i], got.Metrics["ns/op"]/1e6)
		}
	}
	return ms, nil
}

// timed is a row of times.
func timed(what string, ms []float64) Row {
	slices.Sort(ms)
	return Row{What: what, Unit: "ms", Median: ms[len(ms)/2], Worst: ms[len(ms)-1], Runs: len(ms)}
}

// failedRow is the row of what could not be measured.
func failedRow(what string, err error) []Row { return []Row{{What: what, Failed: err}} }
