package bench

import (
	"regexp"
	"strconv"
	"strings"
)

// A Result is one line of a benchmark: how often it ran, and its metrics by unit.
type Result struct {
	N       int
	Metrics map[string]float64
}

// cores is what go test appends to the name of a benchmark: on how many cores it ran.
var cores = regexp.MustCompile(`-\d+$`)

// Parse reads what go test prints of benchmarks, in Go's benchmark format
// (golang.org/design/14313-benchmark-format): name, runs, then pairs of value and unit. The name is
// without "Benchmark" and the number of cores. Lines that are no results are left out; a benchmark
// that ran several times has several results.
func Parse(out string) map[string][]Result {
	all := map[string][]Result{}
	for line := range strings.Lines(out) {
		f := strings.Fields(line)
		if len(f) < 2 || len(f)%2 != 0 || !strings.HasPrefix(f[0], "Benchmark") {
			continue
		}
		n, err := strconv.Atoi(f[1])
		if err != nil {
			continue
		}
		r := Result{N: n, Metrics: map[string]float64{}}
		for i := 2; i < len(f) && err == nil; i += 2 {
			r.Metrics[f[i+1]], err = strconv.ParseFloat(f[i], 64)
		}
		if err != nil {
			continue
		}
		name := cores.ReplaceAllString(strings.TrimPrefix(f[0], "Benchmark"), "")
		all[name] = append(all[name], r)
	}
	return all
}
