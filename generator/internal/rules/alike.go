package rules

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"sutur/generator/internal/diag"
)

// HeardAlike returns the ids of the rules that count as right where this one is marked by ear, in
// the engine's order.
func (r Rule) HeardAlike() []string {
	ids := append(slices.Collect(maps.Keys(r.OneWay)), r.Alike...)
	slices.SortFunc(ids, func(a, b string) int { return index(a) - index(b) })
	return ids
}

// checkAlike reports rules that are alike to what is no rule, to themselves, to one that is held for
// other lengths, or in one direction without a reason.
func checkAlike(all []placed, byID map[string]placed) (ds []diag.Diagnostic) {
	named := map[string]bool{}
	for _, p := range all {
		for _, id := range p.HeardAlike() {
			named[id], named[p.ID] = true, true
		}
	}
	for _, p := range all {
		ds = append(ds, p.checkSound(named[p.ID])...)
		say := func(do, found string, args ...any) { ds = append(ds, p.problem(fmt.Sprintf(found, args...), do)) }
		ids := p.HeardAlike()
		for i, id := range ids {
			other, ok := byID[id]
			reason, one := p.OneWay[id]
			back := slices.Contains(other.Alike, p.ID)
			_, oneBack := other.OneWay[p.ID]
			switch {
			case !ok:
				say("name rules by their id", "rule %s is alike to %q, which is no rule", p.ID, id)
			case id == p.ID:
				say("remove it", "rule %s is alike to itself", p.ID)
			case i > 0 && ids[i-1] == id:
				say("keep one", "rule %s is alike to %s twice", p.ID, id)
			case !one && !back:
				say("name each in the other, or say the reason in oneWay", "rule %s is alike to %s, which is not alike to it", p.ID, id)
			case one && (back || oneBack):
				say("write both into alike", "rules %s and %s are alike in both directions", p.ID, id)
			case len(p.Counts) > 0 && ((p.Setting == "") != (other.Setting == "") || !slices.ContainsFunc(p.Counts, func(n int) bool { return slices.Contains(other.Counts, n) })):
				say("the ear tells them apart; remove it", "rule %s is alike to %s, which is held for other lengths", p.ID, id)
			case one && !strings.HasSuffix(reason, "."):
				say("write why, and end it with a full stop", "rule %s is alike to %s in one direction without a reason", p.ID, id)
			}
		}
	}
	return ds
}

// checkSound reports a rule that lacks the words for what others share with it, or has such words
// and shares nothing. named is whether another rule is alike to it or it to another.
func (p placed) checkSound(named bool) (ds []diag.Diagnostic) {
	switch {
	case len(p.HeardAlike()) > 0 && strings.TrimSpace(p.Sound) == "":
		ds = append(ds, p.problem(fmt.Sprintf("rule %s is alike to others and has no sound", p.ID), `say what is heard in all of them, as in "Yes, two counts too."`))
	case !named && p.Sound != "":
		ds = append(ds, p.problem(fmt.Sprintf("rule %s has a sound and is alike to none", p.ID), "remove it, or name the rules in alike"))
	case strings.TrimRight(p.Sound, ".?! ") != p.Sound || strings.ContainsAny(p.Sound, "{}"):
		ds = append(ds, p.problem(fmt.Sprintf("rule %s has the sound %q", p.ID, p.Sound), "write a few words that stand within a sentence; nothing in it is filled in"))
	}
	return ds
}
