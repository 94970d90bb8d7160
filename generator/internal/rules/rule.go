// Package rules reads what is said about each recitation rule: its names, its family, what must be
// learnt before it, and the sentences that the check uses.
//
// The engine (package recite) decides where a rule acts; this package only speaks of it. Both lists
// of ids are complete: an id that one side lacks is an error. The files are
// rules-content/rules/*.json, one a family, each a list of rules, and beside them details.json, what
// is said of each detail, and groups.json, what a child may mark together. The browser knows of
// rules what the catalogue says, and the catalogue says what stands here.
package rules

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io/fs"
	"path"
	"slices"
	"strings"

	"sutur/generator/internal/diag"
)

// Dir is the folder of the rule files, below the project's folder. Diagnostics name files in it.
const Dir = "rules-content/rules"

// Rule is what is said about one rule.
type Rule struct {
	ID       string   `json:"id"`       // the engine's id, such as noon-ikhfa
	Name     string   `json:"name"`     // in plain English, with the trade's word
	Arabic   string   `json:"arabic"`   // the term with its vowels
	Translit string   `json:"translit"` // the term in Latin letters
	Family   string   `json:"family"`   // one of Families
	Needs    []string `json:"needs"`    // ids of rules that are taught before it
	Counts   []int    `json:"counts"`   // counts (lengths of one short vowel) that may be held; empty where none is
	Setting  string   `json:"setting"`  // which of Settings chooses among Counts; empty where the place alone decides
	Role     string   `json:"role"`     // one of Roles, or empty

	// Alike are rules that are heard alike: who marks by ear, and sees no cause, may rightly mark a
	// place of the other. Each names the other. OneWay are rules whose places have all that this one
	// asks the ear for while its own lack what those ask for, each with the reason.
	Alike  []string          `json:"alike"`
	OneWay map[string]string `json:"oneWay"`
	Sound  string            `json:"sound"` // what is heard in its own places and in these, as in "Yes, two counts too."

	// OnCause is said of a mark on the letter that causes the rule, where that is right for another
	// reason: the sound is heard there. Empty where such a mark is a mistake.
	OnCause string `json:"onCause"`

	Meaning string `json:"meaning"` // what the rule is, a definition for the glossary
	Short   string `json:"short"`   // what to look for, exactly as the engine has it, which letter to mark, and what sounds alike under another rule
	Stuck   string `json:"stuck"`   // what to say to a child who finds no place, at most LongestStuck letters; may be empty
	Why     string `json:"why"`     // sentence for the check, with {letter}, {cause} and {count}

	// Cases holds sentences in place of Why where an event differs from the common case. A key is a
	// detail's id, "unwritten" (heard, not written), "opening" (a letter that opens a surah), the
	// reading in which the event holds (always, join, stop, start), or the letter that causes it,
	// by four hexadecimal digits. The first of these that has a sentence is used.
	Cases map[string]string `json:"cases"`
}

// LongestStuck is the length in letters up to which a child listens to Stuck.
const LongestStuck = 110

// Settings are the lengths in which teachers differ and a family chooses: muttasil and munfasil for a
// long vowel with a hamza in its word or in the next, arid and lin for a long vowel or a soft waw or
// ya before a stop.
var Settings = []string{"muttasil", "munfasil", "arid", "lin"}

// Roles say what a letter does under a rule, for a child who has not been taught the rule: it is
// written and not read, its sound is drawn out, or the ending changes at a stop.
var Roles = []string{"silent", "long", "ending"}

// Families are the families in the order of their colours.
var Families = []string{
	"wasl", "lam", "madd", "ghunnah", "qalqalah", "noon", "meem", "heavy", "long-madd", "idgham", "stop", "single",
}

// FamiliesFile is where Families stand, below the project's folder.
const FamiliesFile = "generator/internal/rules/rule.go"

// Placeholders are the names that may stand in braces in Why: the letter that bears the rule, the
// letter that causes it, and the counts held.
var Placeholders = []string{"letter", "cause", "count"}

// at is the place of a definition.
type at struct {
	file      string
	line, col int
}

func (p at) problem(found, do string) diag.Diagnostic {
	return diag.Diagnostic{File: p.file, Line: p.line, Col: p.col, Found: found, Do: do}
}

// placed is a rule with the place of its definition.
type placed struct {
	Rule
	at
}

// Load reads the rule files of dir. The rules come back in the engine's order. If the diagnostics
// hold an error, the list may lack rules.
func Load(dir fs.FS) ([]Rule, []diag.Diagnostic) {
	names, err := fs.Glob(dir, "*.json")
	if err != nil || len(names) == 0 {
		return nil, []diag.Diagnostic{{File: Dir, Found: "there is no rule file", Do: "put the rules of each family into FAMILY.json"}}
	}
	var all []placed
	var ds []diag.Diagnostic
	for _, n := range names {
		if n == detailsFile || n == groupsFile {
			continue
		}
		src, err := fs.ReadFile(dir, n)
		if err != nil {
			ds = append(ds, diag.Diagnostic{File: path.Join(Dir, n), Found: err.Error()})
			continue
		}
		const fields = "a rule has id, name, arabic, translit, family, needs, counts, setting, role, alike, oneWay, sound, onCause, meaning, short, stuck, why and cases"
		more := parse(path.Join(Dir, n), src, fields, func(r Rule, p at) { all = append(all, placed{r, p}) })
		ds = append(ds, more...)
	}
	ds = append(ds, check(all)...)
	slices.SortStableFunc(all, func(a, b placed) int { return index(a.ID) - index(b.ID) })
	list := make([]Rule, len(all))
	for i, p := range all {
		list[i] = p.Rule
	}
	diag.Sort(ds)
	return list, ds
}

// parse reads one file, a list of T, and hands on each with its place. A mistake in the shape ends
// the file.
func parse[T any](file string, src []byte, fields string, use func(T, at)) (ds []diag.Diagnostic) {
	place := func(off int64) at {
		before := src[:min(int(off), len(src))]
		return at{file, 1 + bytes.Count(before, []byte("\n")), 1 + len([]rune(string(before[bytes.LastIndexByte(before, '\n')+1:])))}
	}
	dec := json.NewDecoder(bytes.NewReader(src))
	if tok, err := dec.Token(); err != nil || tok != json.Delim('[') {
		return []diag.Diagnostic{place(0).problem("this is not a list", "write [ {…}, {…} ]")}
	}
	for dec.More() {
		var raw json.RawMessage
		if err := dec.Decode(&raw); err != nil {
			return append(ds, place(dec.InputOffset()).problem("this is not JSON: "+err.Error(), "correct the entry after this place"))
		}
		p := place(dec.InputOffset() - int64(len(raw)))
		one := json.NewDecoder(bytes.NewReader(raw))
		one.DisallowUnknownFields()
		var x T
		if err := one.Decode(&x); err != nil {
			ds = append(ds, p.problem(strings.TrimPrefix(err.Error(), "json: "), fields))
			continue
		}
		use(x, p)
	}
	if _, err := dec.Token(); err != nil {
		ds = append(ds, place(int64(len(src))).problem("the list does not end", "write ] at its end"))
	} else if rest := bytes.TrimSpace(src[dec.InputOffset():]); len(rest) > 0 {
		ds = append(ds, place(dec.InputOffset()).problem(fmt.Sprintf("%d bytes after the list", len(rest)), "remove them"))
	}
	return ds
}
