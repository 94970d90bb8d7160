package bench

import (
	"context"
	"fmt"
	"io"
	"math"
	"os/exec"
	"runtime"
	"strconv"
	"strings"
	"unicode/utf8"
)

// columns of the table; all but the first and the last stand at the right of their column.
var columns = []string{"what", "median", "worst", "unit", "runs", "at most", "", "note"}

// Print writes the rows of each stage below its heading, in columns.
func Print(w io.Writer, headings []string, stages [][]Row) error {
	lines := [][]string{columns}
	for i, rows := range stages {
		lines = append(lines, []string{strings.ToUpper(headings[i])})
		for _, r := range rows {
			lines = append(lines, r.cells())
		}
	}
	wide := make([]int, len(columns))
	for _, l := range lines {
		for i, cell := range l {
			wide[i] = max(wide[i], utf8.RuneCountInString(cell))
		}
	}
	for _, l := range lines {
		var b strings.Builder
		for i, cell := range l {
			if i > 0 {
				b.WriteString("  ")
			}
			fill := strings.Repeat(" ", wide[i]-utf8.RuneCountInString(cell))
			if right := i > 0 && i < len(columns)-1 && columns[i] != "unit"; right {
				b.WriteString(fill + cell)
			} else {
				b.WriteString(cell + fill)
			}
		}
		if _, err := fmt.Fprintln(w, strings.TrimRight(b.String(), " ")); err != nil {
			return err
		}
	}
	return nil
}

func (r Row) cells() []string {
	if r.Failed != nil {
		return []string{r.What, "", "", "", "", "", "FAILED", oneLine(r.Failed.Error())}
	}
	c := []string{r.What, figure(r.Median), "", r.Unit, "", "", "", r.Note}
	if r.Runs > 0 {
		c[2], c[4] = figure(r.Worst), strconv.Itoa(r.Runs)
	}
	if r.Most > 0 {
		c[5], c[6] = figure(r.Most), "met"
		if !r.met() {
			c[6] = "NOT MET"
		}
	}
	return c
}

// met says whether the budget is kept.
func (r Row) met() bool {
	return r.Median <= r.Most && (!r.Whole || r.Worst <= r.Most)
}

// figure is a number with as many digits as say something: three, or all of a whole one, in groups
// of three.
func figure(x float64) string {
	switch {
	case x != math.Trunc(x) && math.Abs(x) < 10:
		return strconv.FormatFloat(x, 'f', 2, 64)
	case x != math.Trunc(x) && math.Abs(x) < 100:
		return strconv.FormatFloat(x, 'f', 1, 64)
	}
	s := strconv.FormatFloat(math.Round(x), 'f', 0, 64)
	sign := ""
	if s[0] == '-' {
		sign, s = "-", s[1:]
	}
	for i := len(s) - 3; i > 0; i -= 3 {
		s = s[:i] + "," + s[i:]
	}
	return sign + s
}

func oneLine(s string) string { return strings.Join(strings.Fields(s), " ") }

// machine says in a line what was measured with.
func machine(ctx context.Context) string {
	version := runtime.Version()
	if out, err := exec.CommandContext(ctx, goTool(), "env", "GOVERSION").Output(); err == nil {
		version = strings.TrimSpace(string(out))
	}
	return fmt.Sprintf("%s, %s/%s, %d cores", version, runtime.GOOS, runtime.GOARCH, runtime.NumCPU())
}
