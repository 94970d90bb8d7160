package importer

import (
	"strings"
	"testing"
)

// Every class by its own rule, and by no other; all letters as code points.
func TestSpelling(t *testing.T) {
	for _, c := range []struct{ name, ref, a, b, want string }{
		{"prostration line, kept as data", "7:206", "\u0646\u064E\u06E4\u06E9", "\u0646\u064E", "\u0646\u064E\u06E9"},
		{"hamza and long alif", "2:4", "\u0628\u0650\u0623\u0653", "\u0628\u0650\u0640\u0654\u064E\u0627", "\u0628\u0650\u0640\u0654\u064E\u0627"},
		{"hamza beneath its seat", "2:5", "\u0626\u0650\u0643\u064E", "\u0626\u0650\u0643\u064E", "\u0649\u0655\u0650\u0643\u064E"},
		{"hamza beneath its seat, dots of the seat", "28:30", "\u0637\u0650\u064A\u0655\u0650", "\u0637\u0650\u0626\u0650", "\u0637\u0650\u0649\u0655\u0650"},
		{"hamza above its seat, dots of the seat", "24:11", "\u0631\u0650\u064A\u0655\u08F2", "\u0631\u0650\u0626\u064D", "\u0631\u0650\u0626\u08F2"},
		{"small alif, stretch of its own", "1:1", "\u0645\u064E\u0670\u0646\u0650", "\u0645\u064E\u0640\u0670\u0646\u0650", "\u0645\u064E\u0640\u0670\u0646\u0650"},
		{"small alif, stretch after a letter that does not join", "2:40", "\u0631\u064E\u0640\u0670\u0653\u0621", "\u0631\u064E\u0670\u0653\u0621", "\u0631\u064E\u0670\u0653\u0621"},
		{"none", "1:1", "\u0645\u064E\u0640\u0670", "\u0645\u064E\u0640\u0670", "\u0645\u064E\u0640\u0670"},
		{"none", "43:58", "\u0623\u064E\u0670", "\u0623\u064E\u0640\u0670", "\u0623\u064E\u0670"},
		{"none", "2:48", "\u0626\u08F2", "\u0626\u064D", "\u0626\u08F2"},                                                       // stays above
		{"none", "56:23", "\u0648\u0655\u0650", "\u0624\u0650", "\u0648\u0655\u0650"},                                          // as A has it
		{"none", "2:48", "\u0640\u0654\u064E\u0640", "\u0640\u0654\u064E\u0640", "\u0640\u0654\u064E\u0640"},                   // no stretch of an alif
		{"none", "2:72", "\u0631\u064E\u0670\u0654", "\u0631\u064E\u0670\u0654", "\u0631\u064E\u0670\u0654"},                   // its own hamza
		{"none", "17:7", "\u0633\u064F\u0640\u06E5\u0653", "\u0633\u064F\u0640\u06E5\u0653", "\u0633\u064F\u0640\u06E5\u0653"}, // a small waw
	} {
		done := tally{}
		if got := done.run(spelling, c.ref, c.a, c.b); got != c.want {
			t.Errorf("%s: %+q gives %+q, want %+q", c.name, c.a, got, c.want)
		}
		for name, n := range done {
			if want := name == c.name; n != 0 != want || n > 1 {
				t.Errorf("%s: %q changed %d places of %+q", c.name, name, n, c.a)
			}
		}
	}
}

func TestCodePoints(t *testing.T) {
	for _, c := range []struct{ ref, a, want string }{
		{"1:1", "\u0657\u065E\u0656\u0652\u065C", "\u08F0\u08F1\u08F2\u06DF\u06EA"},
		{"12:11", "\u06EC", "\u06EB"},
		{"41:44", "\u06EC", "\u06EC"},
	} {
		if got := (tally{}).run(codePoints, c.ref, c.a, ""); got != c.want {
			t.Errorf("%s: %+q gives %+q, want %+q", c.ref, c.a, got, c.want)
		}
	}
}

// One place more or fewer than a rule names stops the import.
func TestTallyRefuses(t *testing.T) {
	full := func() tally {
		done := tally{}
		for _, list := range [][]rule{codePoints, spelling} {
			for _, r := range list {
				done[r.name] = r.places
			}
		}
		return done
	}
	if _, err := full().check(); err != nil {
		t.Fatal(err)
	}
	for name := range full() {
		for _, by := range []int{1, -1} {
			done := full()
			done[name] += by
			if _, err := done.check(); err == nil || !strings.Contains(err.Error(), name) {
				t.Errorf("%s by %d: error %v", name, by, err)
			}
		}
	}
}

func TestCorrections(t *testing.T) {
	a, b := []string{"\u0628\u06DC\u0627", "\u062A\u06DA"}, []string{"\u0628\u06E3\u0627", "\u062A"}
	for _, c := range []struct {
		c    Correction
		a, b []string
		want string // "" for an error
	}{
		{Correction{Word: 1}, a, b, b[0] + " " + a[1]},
		{Correction{Word: 2}, a, b, a[0] + " " + a[1]}, // the pause sign of A stays
		{Correction{Word: 3}, a, b, ""},
		{Correction{Word: 0}, a, b, ""},
		{Correction{Word: 1}, a[:1], b, ""},
		{Correction{Split: true}, []string{"\u0628\u0627\u062A\u06DA"}, []string{"\u0628\u0627", "\u062A"}, "\u0628\u0627 \u062A\u06DA"},
		{Correction{Split: true}, a, b, ""},
		{Correction{Split: true}, []string{"\u0628\u0627\u062A"}, []string{"\u0628\u0627", "\u062A\u062A"}, ""},
	} {
		got, err := c.c.apply(append([]string{}, c.a...), c.b)
		if s := strings.Join(got, " "); s != c.want || (err != nil) != (c.want == "") {
			t.Errorf("%+v: %+q, %v; want %+q", c.c, s, err, c.want)
		}
	}
}

// Stretches come and go; no other rune does, and a second run changes nothing.
func FuzzStretch(f *testing.F) {
	f.Add("\u0645\u064E\u0670\u0646", "\u0645\u064E\u0640\u0670\u0646")
	f.Add("\u0631\u064E\u0640\u0670\u0640\u0640\u0654", "\u0670")
	f.Add("\u0640", "\u0640\u0670\u0670")
	f.Fuzz(func(t *testing.T, a, b string) {
		a, b = strings.ToValidUTF8(a, ""), strings.ToValidUTF8(b, "")
		bare := func(s string) string { return strings.ReplaceAll(s, "\u0640", "") }
		got := (tally{}).run(spelling[5:], "1:1", a, b)
		if bare(got) != bare(a) {
			t.Fatalf("%+q gives %+q", a, got)
		}
		if again := (tally{}).run(spelling[5:], "1:1", got, b); again != got {
			t.Fatalf("%+q gives %+q, then %+q", a, got, again)
		}
	})
}

func TestImportRefusesOtherSources(t *testing.T) {
	if _, _, err := Import(Sources{}); err == nil || !strings.Contains(err.Error(), "text A has SHA-256") {
		t.Errorf("error %v", err)
	}
}
