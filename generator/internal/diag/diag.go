// Package diag holds what a stage has to say about the content it read: where it looked, what it
// found there, and what to do about it.
//
// Stages return diagnostics as values and go on, so that one run tells an author about every
// mistake. Whoever runs the stages prints them sorted by place, and stops before anything is
// written if one of them is an Error.
package diag

import (
	"cmp"
	"fmt"
	"io"
	"slices"
)

// Severity says whether a build may go on.
type Severity uint8

// An Error stops the build; a Warning is printed and the build goes on.
const (
	Error Severity = iota
	Warning
)

// String returns "error" or "warning".
func (s Severity) String() string {
	if s == Warning {
		return "warning"
	}
	return "error"
}

// Diagnostic is one finding about one place of one file.
type Diagnostic struct {
	File     string // slash-separated path below the project's folder
	Line     int    // from 1; 0 speaks of the whole file
	Col      int    // in characters, from 1; 0 speaks of the whole line
	Severity Severity
	Found    string // what is there
	Do       string // what to do; may be empty
}

// String returns "file:line:col: found; do", without the parts that are not known, and with
// "warning: " before what was found if it is only a warning.
func (d Diagnostic) String() string {
	s := d.File
	if d.Line > 0 {
		s += fmt.Sprintf(":%d", d.Line)
		if d.Col > 0 {
			s += fmt.Sprintf(":%d", d.Col)
		}
	}
	if s != "" {
		s += ": "
	}
	if d.Severity == Warning {
		s += "warning: "
	}
	s += d.Found
	if d.Do != "" {
		s += "; " + d.Do
	}
	return s
}

// HasError reports whether ds holds at least one Error.
func HasError(ds []Diagnostic) bool {
	return slices.ContainsFunc(ds, func(d Diagnostic) bool { return d.Severity == Error })
}

// Sort orders ds by file, line and column; findings of one place keep their order.
func Sort(ds []Diagnostic) {
	slices.SortStableFunc(ds, func(a, b Diagnostic) int {
		return cmp.Or(cmp.Compare(a.File, b.File), cmp.Compare(a.Line, b.Line), cmp.Compare(a.Col, b.Col))
	})
}

// Print writes ds to w, one a line.
func Print(w io.Writer, ds []Diagnostic) error {
	for _, d := range ds {
		if _, err := fmt.Fprintln(w, d); err != nil {
			return fmt.Errorf("print diagnostics: %w", err)
		}
	}
	return nil
}
