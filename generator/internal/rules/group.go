package rules

import (
	"fmt"
	"io/fs"
	"path"
	"regexp"
	"slices"
	"strings"

	"sutur/generator/internal/diag"
)

// groupsFile is the file in Dir that is about what a child may mark together.
const groupsFile = "groups.json"

// Group is every rule of some families under one name: what a child marks with one pencil. Where it
// is chosen it stands beside rules, so its id is none of theirs.
type Group struct {
	ID       string   `json:"id"`
	Name     string   `json:"name"` // what is marked; it stands on a button
	Families []string `json:"families"`
}

// LongestName is the length in letters up to which the name of a group fits on a button.
const LongestName = 40

// notGroups are ids of other things that can be chosen in the place of a group.
var notGroups = []string{"stops"}

var groupID = regexp.MustCompile(`^[a-z]+(-[a-z]+)*$`)

// LoadGroups reads groups.json of dir, the folder of the rule files, in the order in which the
// groups are shown. list are the rules, for what a group holds.
func LoadGroups(dir fs.FS, list []Rule) ([]Group, []diag.Diagnostic) {
	file := path.Join(Dir, groupsFile)
	src, err := fs.ReadFile(dir, groupsFile)
	if err != nil {
		return nil, []diag.Diagnostic{{File: file, Found: err.Error(), Do: "write what is marked together, or [] for nothing"}}
	}
	var groups []Group
	var wrong []diag.Diagnostic
	ds := parse(file, src, "a group has id, name and families", func(g Group, p at) {
		if slices.ContainsFunc(groups, func(o Group) bool { return o.ID == g.ID }) {
			wrong = append(wrong, p.problem(fmt.Sprintf("group %s is there twice", g.ID), "keep one"))
		}
		groups = append(groups, g)
		wrong = append(wrong, g.check(p, list)...)
	})
	return groups, append(ds, wrong...)
}

func (g Group) check(p at, list []Rule) (ds []diag.Diagnostic) {
	say := func(do, found string, args ...any) { ds = append(ds, p.problem(fmt.Sprintf(found, args...), do)) }
	switch {
	case !groupID.MatchString(g.ID):
		say("write it in small letters and hyphens, such as all-noon", "a group has the id %q", g.ID)
	case index(g.ID) >= 0 || slices.Contains(notGroups, g.ID):
		say("choose another", "group %s has the id of something else that can be chosen", g.ID)
	}
	if n := len([]rune(g.Name)); strings.TrimSpace(g.Name) == "" || n > LongestName {
		say(fmt.Sprintf("write 1 to %d, for a button", LongestName), "group %s has a name of %d letters", g.ID, n)
	}
	held := 0
	for i, f := range g.Families {
		if !slices.Contains(Families, f) {
			say("families are "+strings.Join(Families, ", "), "group %s holds the family %q", g.ID, f)
		}
		if slices.Contains(g.Families[:i], f) {
			say("keep one", "group %s holds the family %s twice", g.ID, f)
			continue
		}
		for _, r := range list {
			if r.Family == f {
				held++
			}
		}
	}
	if held < 2 {
		say("take families with two rules or more; one rule needs no group", "group %s holds %d rules", g.ID, held)
	}
	return ds
}
