package lesson

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io/fs"
	"path"
	"strings"

	"sutur/generator/internal/diag"
)

// TermsFile holds the terms that lessons may use beside the names of the rules.
const TermsFile = "terms.json"

// Term is one entry of the glossary.
type Term struct {
	ID       string `json:"id"`
	Name     string `json:"name"`     // as the lessons write it in English; no two alike, rules included
	Arabic   string `json:"arabic"`   // with its vowels; empty for a word that is English alone
	Translit string `json:"translit"` // in Latin letters; empty where it is the name
	Meaning  string `json:"meaning"`  // one or two sentences
}

func (c *course) readTerms(dir fs.FS) {
	file := path.Join(Dir, TermsFile)
	src, err := fs.ReadFile(dir, TermsFile)
	if err != nil {
		c.diags = append(c.diags, diag.Diagnostic{File: file, Found: err.Error()})
		return
	}
	dec := json.NewDecoder(bytes.NewReader(src))
	dec.DisallowUnknownFields()
	if err := dec.Decode(&c.terms); err != nil {
		line := 1 + bytes.Count(src[:min(int(dec.InputOffset()), len(src))], []byte("\n"))
		c.diags = append(c.diags, diag.Diagnostic{File: file, Line: line, Found: err.Error(), Do: "a term has id, name, arabic, translit and meaning"})
	}
	seen := map[string]bool{}
	for _, t := range c.terms {
		_, rule := c.rules[t.ID]
		if seen[t.ID] || rule || t.ID == "" || t.Name == "" || strings.TrimSpace(t.Meaning) == "" {
			c.diags = append(c.diags, diag.Diagnostic{File: file, Found: fmt.Sprintf("the term %q is there twice, is a rule, or lacks a part", t.ID), Do: "give each an id of its own, a name and a meaning"})
		}
		seen[t.ID] = true
	}
}

// term returns the Arabic of a term or a rule.
func (c *course) term(id string) (string, bool) {
	if r, ok := c.rules[id]; ok {
		return r.Arabic, true
	}
	for _, t := range c.terms {
		if t.ID == id {
			return t.Arabic, t.Arabic != ""
		}
	}
	return "", false
}
