package mushaf

import (
	"fmt"
	"strconv"
	"strings"
)

// Range is a run of verses: indices into Text.Verses, both ends included.
type Range struct{ First, Last int }

const refsAccepted = "accepted are a surah (78), a verse (78:1), verses of a surah (78:1-5), surahs (78-80) or verses across surahs (78:38-79:5)"

// ParseRefs reads references separated by spaces or commas. A malformed reference, or one outside
// the text, is an error of one line that says what was found and what is accepted.
func ParseRefs(t *Text, s string) ([]Range, error) {
	var out []Range
	for _, f := range strings.FieldsFunc(s, func(r rune) bool { return r == ' ' || r == ',' }) {
		r, err := parseRef(t, f)
		if err != nil {
			return nil, err
		}
		out = append(out, r)
	}
	if len(out) == 0 {
		return nil, fmt.Errorf("no reference given; %s", refsAccepted)
	}
	return out, nil
}

func parseRef(t *Text, s string) (Range, error) {
	from, to, ranged := strings.Cut(s, "-")
	a, err := parsePlace(t, s, from)
	if err != nil {
		return Range{}, err
	}
	if !ranged {
		return a, nil
	}
	if strings.Contains(from, ":") && !strings.Contains(to, ":") {
		to = strconv.Itoa(t.Verses[a.First].Surah) + ":" + to
	}
	b, err := parsePlace(t, s, to)
	if err != nil {
		return Range{}, err
	}
	if b.Last < a.First {
		return Range{}, fmt.Errorf("%q ends before it begins; %s", s, refsAccepted)
	}
	return Range{a.First, b.Last}, nil
}

func parsePlace(t *Text, whole, s string) (Range, error) {
	su, ve, verse := strings.Cut(s, ":")
	n, ok := number(su)
	if !ok {
		return Range{}, fmt.Errorf("%q is not a reference; %s", whole, refsAccepted)
	}
	if n < 1 || n > len(t.Surahs) {
		return Range{}, fmt.Errorf("%q names surah %d; there are surahs 1 to %d", whole, n, len(t.Surahs))
	}
	sur := t.Surahs[n-1]
	if !verse {
		return Range{sur.First, sur.First + sur.Count - 1}, nil
	}
	a, ok := number(ve)
	if !ok {
		return Range{}, fmt.Errorf("%q is not a reference; %s", whole, refsAccepted)
	}
	if a < 1 || a > sur.Count {
		return Range{}, fmt.Errorf("%q names verse %d; surah %d has verses 1 to %d", whole, a, n, sur.Count)
	}
	return Range{sur.First + a - 1, sur.First + a - 1}, nil
}

// number reads one to four ASCII digits: no sign, no other script's digits.
func number(s string) (int, bool) {
	if s == "" || len(s) > 4 {
		return 0, false
	}
	for _, c := range []byte(s) {
		if c < '0' || c > '9' {
			return 0, false
		}
	}
	n, _ := strconv.Atoi(s)
	return n, true
}
