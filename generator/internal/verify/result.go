package verify

import (
	"encoding/json"
	"fmt"
	"io"
	"io/fs"
	"strings"
	"text/tabwriter"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

// Result is what one witness found. Checked counts the places looked at (letters, words, verses or
// figures, as the witness says); each is Agreeing, Explained by an entry of exceptions.json or of
// folds, or Unexplained. Details says, a line each, where a place is unexplained or an exception is
// of no use.
type Result struct {
	Witness                                   string
	Checked, Agreeing, Explained, Unexplained int
	Details                                   []string
}

// Exception is one reviewed place where a witness may differ, and why. Word counts from 1; 0 is the
// whole verse.
type Exception struct {
	Witness string `json:"witness"`
	Ref     string `json:"ref"`
	Word    int    `json:"word"`
	Reason  string `json:"reason"`
}

// ExceptionFile holds the exceptions, in the folder of the text.
const ExceptionFile = "exceptions.json"

// Exceptions reads ExceptionFile of dir. An entry without a reason is an error.
func Exceptions(dir fs.FS) ([]Exception, error) {
	raw, err := fs.ReadFile(dir, ExceptionFile)
	if err != nil {
		return nil, fmt.Errorf("read the exceptions: %w", err)
	}
	var out []Exception
	if err := json.Unmarshal(raw, &out); err != nil {
		return nil, fmt.Errorf("%s: %w", ExceptionFile, err)
	}
	for _, x := range out {
		if x.Witness == "" || x.Ref == "" || strings.TrimSpace(x.Reason) == "" {
			return nil, fmt.Errorf("%s: %+v lacks a witness, a reference or a reason", ExceptionFile, x)
		}
	}
	return out, nil
}

type place struct {
	witness, ref string
	word         int
}

// bench gathers the results of the witnesses and knows which exceptions were of use.
type bench struct {
	results []*Result
	allowed map[place]bool // value: used
}

func newBench(xs []Exception) *bench {
	b := &bench{allowed: map[place]bool{}}
	for _, x := range xs {
		b.allowed[place{x.Witness, x.Ref, x.Word}] = false
	}
	return b
}

func (b *bench) witness(name string) *stand {
	r := &Result{Witness: name}
	b.results = append(b.results, r)
	return &stand{b, r}
}

// stand is where one witness speaks.
type stand struct {
	b *bench
	r *Result
}

// same compares what the witness shows with what the engine says of one place.
func (s *stand) same(ref string, word int, at, shown, said string) {
	s.r.Checked++
	if shown == said {
		s.r.Agreeing++
		return
	}
	if p := (place{s.r.Witness, ref, word}); s.allows(p) {
		s.b.allowed[p] = true
		s.r.Explained++
		return
	}
	s.r.Unexplained++
	s.r.Details = append(s.r.Details, fmt.Sprintf("%s: %s.%d %s: shown %s, engine says %s", s.r.Witness, ref, word, at, shown, said))
}

// figure holds a count against what it must be: one place more or fewer is unexplained.
func (s *stand) figure(got, want int) {
	s.r.Checked, s.r.Agreeing, s.r.Unexplained = max(got, want), min(got, want), max(got, want)-min(got, want)
	if got != want {
		s.r.Details = append(s.r.Details, fmt.Sprintf("%s: %d places, %d are expected", s.r.Witness, got, want))
	}
}

func (s *stand) allows(p place) bool { _, ok := s.b.allowed[p]; return ok }

// close charges every exception that explained nothing to its witness: a list that is longer than
// its use hides faults.
func (b *bench) close() []Result {
	for p, used := range b.allowed {
		if used {
			continue
		}
		var r *Result
		for _, x := range b.results {
			if x.Witness == p.witness {
				r = x
			}
		}
		if r == nil {
			r = b.witness(p.witness).r
		}
		r.Unexplained++
		r.Details = append(r.Details, fmt.Sprintf("%s: the exception for %s word %d explains nothing; take it out of %s", p.witness, p.ref, p.word, ExceptionFile))
	}
	out := make([]Result, len(b.results))
	for i, r := range b.results {
		out[i] = *r
	}
	return out
}

// Engine is what the witnesses need of recite.
type Engine interface {
	Verse(dst []recite.Event, v int) []recite.Event
}

// All brings every witness over the text in dir: the two texts, the text's own signs over an engine
// that cannot see them, known counts, and the poems.
func All(dir fs.FS) ([]Result, error) {
	t, err := mushaf.Load(dir)
	if err != nil {
		return nil, err
	}
	xs, err := Exceptions(dir)
	if err != nil {
		return nil, err
	}
	b := newBench(xs)
	if err := texts(b, dir); err != nil {
		return nil, err
	}
	spelling(b, t)
	signs(b, t, recite.NewBlank(t))
	equal(b, t, recite.New(t), recite.NewBlank(t))
	counts(b, t, recite.New(t))
	poems(b, recite.Sets())
	return b.close(), nil
}

// Run prints the table of All to w, and every unexplained place under it, for the text in dir
// (rules-content/text). ok is false where there is such a place; err says that the witnesses could
// not run.
func Run(w io.Writer, dir fs.FS) (ok bool, err error) {
	rs, err := All(dir)
	if err != nil {
		return false, err
	}
	tw := tabwriter.NewWriter(w, 0, 0, 2, ' ', tabwriter.AlignRight)
	fmt.Fprint(tw, "checked\tagreeing\texplained\tunexplained\t  witness\n")
	ok = true
	for _, r := range rs {
		fmt.Fprintf(tw, "%d\t%d\t%d\t%d\t  %s\n", r.Checked, r.Agreeing, r.Explained, r.Unexplained, r.Witness)
		ok = ok && r.Unexplained == 0
	}
	if err := tw.Flush(); err != nil {
		return false, err
	}
	for _, r := range rs {
		for _, d := range r.Details {
			if _, err := fmt.Fprintln(w, d); err != nil {
				return false, err
			}
		}
	}
	return ok, nil
}
