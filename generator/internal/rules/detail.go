package rules

import (
	"fmt"
	"io/fs"
	"path"
	"slices"
	"strings"

	"sutur/generator/internal/diag"
	"sutur/generator/internal/recite"
)

// detailsFile is the file in Dir that is about details and not about the rules of a family.
const detailsFile = "details.json"

// Detail is what is said about one of the engine's details.
type Detail struct {
	ID     string `json:"id"`
	Counts []int  `json:"counts,omitempty"` // lengths that some teachers accept here beside the default
	At     string `json:"at,omitempty"`     // join or stop: Counts are accepted only when reading on after the word, or only at a stop there
	Text   string `json:"text,omitempty"`   // a sentence for the check; empty where the rule's own says it
}

// LoadDetails reads details.json of dir, the folder of the rule files. The details come back in the
// engine's order; the first, for no detail, has no id. If the diagnostics hold an error, the list
// may lack details.
func LoadDetails(dir fs.FS) ([]Detail, []diag.Diagnostic) {
	file := path.Join(Dir, detailsFile)
	src, err := fs.ReadFile(dir, detailsFile)
	if err != nil {
		return nil, []diag.Diagnostic{{File: file, Found: err.Error(), Do: "write what each detail means"}}
	}
	ids := recite.Details()
	list := make([]Detail, len(ids))
	var wrong []diag.Diagnostic
	ds := parse(file, src, "a detail has id, counts, at and text", func(d Detail, p at) {
		i := slices.Index(ids, d.ID)
		switch {
		case i <= 0:
			wrong = append(wrong, p.problem(fmt.Sprintf("the engine has no detail %q", d.ID), "use an id of the engine"))
		case list[i].ID != "":
			wrong = append(wrong, p.problem(fmt.Sprintf("detail %s is there twice", d.ID), "keep one"))
		default:
			list[i] = d
			wrong = append(wrong, d.check(p)...)
		}
	})
	for _, id := range ids[1:] {
		if !slices.ContainsFunc(list, func(d Detail) bool { return d.ID == id }) {
			wrong = append(wrong, diag.Diagnostic{File: file, Found: "nothing is said about the engine's detail " + id, Do: "add it"})
		}
	}
	return list, append(ds, wrong...)
}

func (d Detail) check(p at) []diag.Diagnostic {
	ds := p.checkCounts("detail "+d.ID, d.Counts)
	if d.At != "" && d.At != "join" && d.At != "stop" || d.At != "" && len(d.Counts) == 0 {
		ds = append(ds, p.problem(fmt.Sprintf("detail %s holds at %q", d.ID, d.At), "join and stop are accepted, beside counts"))
	}
	if t := d.Text; t != "" && !strings.HasSuffix(t, ".") || strings.ContainsAny(t, "{}") {
		ds = append(ds, p.problem(fmt.Sprintf("detail %s has the sentence %q", d.ID, t), "end it with a full stop; nothing in it is filled in"))
	}
	return ds
}
