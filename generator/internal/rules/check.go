package rules

import (
	"fmt"
	"maps"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"sutur/generator/internal/diag"
	"sutur/generator/internal/recite"
)

// check looks at each rule by itself, then at all of them together.
func check(all []placed) (ds []diag.Diagnostic) {
	byID := map[string]placed{}
	for _, p := range all {
		if first, ok := byID[p.ID]; ok {
			ds = append(ds, p.problem(fmt.Sprintf("rule %s is there twice", p.ID), fmt.Sprintf("keep one; the first is at %s:%d", first.file, first.line)))
			continue
		}
		byID[p.ID] = p
		ds = append(ds, p.check()...)
	}
	for _, id := range IDs() {
		if _, ok := byID[id]; !ok {
			ds = append(ds, diag.Diagnostic{File: Dir, Found: fmt.Sprintf("nothing is said about the engine's rule %s", id), Do: "add it to the file of its family"})
		}
	}
	for _, p := range all {
		for _, n := range p.Needs {
			if _, ok := byID[n]; !ok {
				ds = append(ds, p.problem(fmt.Sprintf("rule %s needs %q, which is no rule", p.ID, n), "name rules by their id"))
			}
		}
	}
	ds = append(ds, checkAlike(all, byID)...)
	return append(ds, cycles(all, byID)...)
}

var brace = regexp.MustCompile(`\{[^{}]*\}?|\}`)

func (p placed) check() (ds []diag.Diagnostic) {
	say := func(do, found string, args ...any) { ds = append(ds, p.problem(fmt.Sprintf(found, args...), do)) }
	if index(p.ID) < 0 {
		say("use an id of the engine", "the engine has no rule %q", p.ID)
	}
	if !slices.Contains(Families, p.Family) {
		say("families are "+strings.Join(Families, ", "), "rule %s is of family %q", p.ID, p.Family)
	}
	for _, f := range [...]struct{ key, value string }{
		{"name", p.Name}, {"arabic", p.Arabic}, {"translit", p.Translit}, {"meaning", p.Meaning}, {"short", p.Short}, {"why", p.Why},
	} {
		if strings.TrimSpace(f.value) == "" {
			say("write it", "rule %s has no %s", p.ID, f.key)
		}
	}
	for _, r := range p.Arabic {
		if !unicode.Is(unicode.Arabic, r) && !unicode.Is(unicode.Mn, r) && r != ' ' {
			say("write the term in Arabic letters", "rule %s has %q in its Arabic name", p.ID, r)
			break
		}
	}
	ds = append(ds, p.checkCounts("rule "+p.ID, p.Counts)...)
	if p.Setting != "" && !slices.Contains(Settings, p.Setting) {
		say("settings are "+strings.Join(Settings, ", "), "rule %s is governed by %q", p.ID, p.Setting)
	}
	if p.Setting != "" && len(p.Counts) < 2 {
		say("give the counts to choose from, or remove the setting", "rule %s has a setting and nothing to choose", p.ID)
	}
	if p.Role != "" && !slices.Contains(Roles, p.Role) {
		say("roles are "+strings.Join(Roles, ", "), "rule %s has the role %q", p.ID, p.Role)
	}
	if n := len([]rune(p.Stuck)); n > LongestStuck || strings.ContainsAny(p.Stuck, "\"“”") {
		say(fmt.Sprintf("write at most %d letters, without quotation marks", LongestStuck), "rule %s has %d letters to say to a child who is stuck: %q", p.ID, n, p.Stuck)
	}
	sentences := []string{p.Short, p.Stuck, p.Meaning, p.OnCause, p.Why}
	for _, k := range slices.Sorted(maps.Keys(p.Cases)) {
		if !isCase(k) {
			say("name a detail, unwritten, opening, always, join, stop, start, or a letter by four hexadecimal digits",
				"rule %s has a sentence for %q", p.ID, k)
		}
		if strings.TrimSpace(p.Cases[k]) == "" {
			say("write it", "rule %s has an empty sentence for %q", p.ID, k)
		}
		sentences = append(sentences, p.Cases[k])
	}
	for i, s := range sentences {
		if s = strings.TrimSpace(s); s != "" && !strings.HasSuffix(s, ".") && !strings.HasSuffix(s, "?") {
			say("end it with a full stop or a question mark", "rule %s has a sentence without an end: %q", p.ID, s)
		}
		for _, b := range brace.FindAllString(s, -1) {
			if i < 4 || !slices.Contains(Placeholders, strings.Trim(b, "{}")) || len(b) < 3 {
				say("{letter}, {cause} and {count} are accepted in why and cases, and nowhere else", "rule %s has %q in %q", p.ID, b, s)
			}
		}
		if strings.Contains(s, "{count}") && len(p.Counts) == 0 {
			say("give counts or remove {count}", "rule %s speaks of a count and has none", p.ID)
		}
	}
	return ds
}

// checkCounts reports lengths that no vowel and no hum is held for.
func (p at) checkCounts(what string, counts []int) (ds []diag.Diagnostic) {
	for _, c := range counts {
		if c < 1 || c > 6 {
			ds = append(ds, p.problem(fmt.Sprintf("%s is held for %d counts", what, c), "1 to 6 are accepted"))
		}
	}
	return ds
}

// isCase reports whether k can be a key of Rule.Cases.
func isCase(k string) bool {
	switch k {
	case "unwritten", "opening", "always", "join", "stop", "start":
		return true
	}
	if slices.Contains(recite.Details()[1:], k) {
		return true
	}
	r, err := strconv.ParseUint(k, 16, 16)
	return err == nil && len(k) == 4 && unicode.Is(unicode.Arabic, rune(r)) && unicode.IsLetter(rune(r))
}

// cycles reports every rule that, by way of needs, needs itself. One report a ring.
func cycles(all []placed, byID map[string]placed) (ds []diag.Diagnostic) {
	const open, done = 1, 2
	state := map[string]int{}
	var path []string
	var visit func(id string)
	visit = func(id string) {
		switch state[id] {
		case done:
			return
		case open:
			ring := append(slices.Clone(path[slices.Index(path, id):]), id)
			ds = append(ds, byID[id].problem("these rules need each other in a ring: "+strings.Join(ring, " needs "), "remove one of the needs"))
			return
		}
		state[id] = open
		path = append(path, id)
		for _, n := range byID[id].Needs {
			visit(n)
		}
		path = path[:len(path)-1]
		state[id] = done
	}
	for _, p := range all {
		visit(p.ID)
	}
	return ds
}
