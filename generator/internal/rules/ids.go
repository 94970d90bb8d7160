package rules

import "sutur/generator/internal/recite"

// IDs returns the engine's rules in its order.
func IDs() []string {
	ids := make([]string, recite.NumRules)
	for i := range ids {
		ids[i] = recite.RuleID(i).String()
	}
	return ids
}

// index is the place of an id in the engine's order, -1 for none.
func index(id string) int {
	if r, ok := recite.ParseRule(id); ok {
		return int(r)
	}
	return -1
}
