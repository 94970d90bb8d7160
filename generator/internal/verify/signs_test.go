package verify

import (
	"bytes"
	"os"
	"strings"
	"testing"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

func load(t testing.TB) *mushaf.Text {
	t.Helper()
	tx, err := mushaf.Load(os.DirFS(textDir))
	if err != nil {
		t.Fatal(err)
	}
	return tx
}

// Every witness over the whole text.
func TestWitnesses(t *testing.T) {
	rs, err := All(os.DirFS(textDir))
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range rs {
		if r.Checked == 0 || r.Checked != r.Agreeing+r.Explained+r.Unexplained {
			t.Errorf("%s: the figures do not add up: %+v", r.Witness, r)
		}
		for _, d := range r.Details {
			t.Error(d)
		}
	}
}

// The engine that the signs are held against must not have seen them.
func TestBlankHidesTheSigns(t *testing.T) {
	tx := recite.Blank(load(t))
	hidden := mushaf.Sukun | mushaf.Maddah | mushaf.FathatanOpen | mushaf.DammatanOpen | mushaf.KasratanOpen | mushaf.MeemHigh | mushaf.MeemLow
	zeros, kept := 0, 0
	for _, v := range tx.Verses {
		for w, x := range v.Words {
			for i, l := range x.Letters {
				if l.Has(hidden) {
					t.Fatalf("%d:%d.%d letter %d still bears a sign: %b", v.Surah, v.Ayah, w+1, i+1, l.Marks&hidden)
				}
				if l.Has(mushaf.Shadda) && (i == 0 || bare(x.Letters[i-1])) {
					t.Fatalf("%d:%d.%d letter %d still bears the shadda of merging", v.Surah, v.Ayah, w+1, i+1)
				}
			}
		}
	}
	for v, x := range load(t).Verses {
		for w := range x.Words {
			for i, l := range x.Words[w].Letters {
				if l.Has(mushaf.RoundZero) {
					zeros++
					if tx.Verses[v].Words[w].Letters[i].Has(mushaf.RoundZero) {
						kept++
					}
				}
			}
		}
	}
	// The rest cannot be told from the letters: the waw of a few words, and an alif after a fatha.
	if zeros != 3988 || kept >= zeros/10 {
		t.Errorf("%d of %d round zeros are still to be seen; 3988 and fewer than a tenth of them are expected", kept, zeros)
	}
}

// bare: a consonant of which nothing but a merging could come, so that the print's shadda after it
// is one.
func bare(l mushaf.Letter) bool {
	return l.Marks == 0 && !strings.ContainsRune("اويىٱ\u0670\u06E5\u06E6\u06E7", l.Rune) && l.Rune != 'ل'
}

// altered is an engine whose events were changed on the way.
type altered struct {
	Engine
	change func(recite.Event) (recite.Event, bool)
}

func (a altered) Verse(dst []recite.Event, v int) []recite.Event {
	for _, e := range a.Engine.Verse(nil, v) {
		if e, keep := a.change(e); keep {
			dst = append(dst, e)
		}
	}
	return dst
}

// A witness that cannot find a fault proves nothing. For every rule that a sign shows: one event
// lost, one event more, and one event turned into another are seen.
func TestSignsSeeFaults(t *testing.T) {
	tx := load(t)
	e := recite.New(tx)
	lost := ids(recite.HamzatWasl, recite.SunLam, recite.MoonLam, recite.SilentLetter, recite.Ghunnah, recite.NoonIzhar,
		recite.NoonIzharMutlaq, recite.NoonIdghamGhunnah, recite.NoonIdgham, recite.NoonIqlab, recite.NoonIkhfa,
		recite.MeemIkhfa, recite.MeemIdgham, recite.MeemIzhar, recite.IdghamMithlayn, recite.IdghamMutajanisayn,
		recite.IdghamMutaqaribayn, recite.MaddSilahLong, recite.MaddMuttasil, recite.MaddMunfasil, recite.MaddLazim,
		recite.MaddLazimLetter, recite.Qalqalah, recite.PauseSign, recite.Sakt, recite.Imalah, recite.Ishmam,
		recite.TasHil, recite.SadAsSeen, recite.Sajdah, recite.HeavyRa, recite.LightRa, recite.HeavyRaSakinah,
		recite.LightRaSakinah)
	joined := func(x recite.Event) bool { return (x.When == recite.Always || x.When == recite.Join) && !x.Unwritten }
	// try changes the first event that matches and hears the verses around it, before and after.
	try := func(name string, match recite.RuleID, change func(recite.Event) (recite.Event, bool)) {
		t.Run(name, func(t *testing.T) {
			at := -1
			var buf []recite.Event
			for v := 0; at < 0 && v < len(tx.Verses); v++ {
				buf = e.Verse(buf[:0], v)
				for _, x := range buf {
					if x.Rule == match && joined(x) {
						at = v
						break
					}
				}
			}
			once := false
			bad := altered{e, func(x recite.Event) (recite.Event, bool) {
				if x.Rule != match || !joined(x) || once {
					return x, true
				}
				once = true
				return change(x)
			}}
			if judge(tx, bad, at) <= judge(tx, e, at) || !once {
				t.Error("not seen")
			}
		})
	}
	for _, id := range lost {
		try(id.String()+" lost", id, func(x recite.Event) (recite.Event, bool) { return x, false })
	}
	for _, c := range []struct{ from, to recite.RuleID }{
		{recite.NoonIzhar, recite.NoonIkhfa}, {recite.NoonIkhfa, recite.NoonIzhar}, {recite.NoonIdgham, recite.NoonIqlab},
		{recite.NoonIqlab, recite.NoonIkhfa}, {recite.NoonIdghamGhunnah, recite.NoonIzhar}, {recite.MeemIzhar, recite.MeemIdgham},
		{recite.MeemIkhfa, recite.MeemIzhar}, {recite.SunLam, recite.MoonLam}, {recite.MoonLam, recite.SunLam},
		{recite.MaddTabii, recite.MaddMunfasil}, {recite.MaddMuttasil, recite.MaddTabii}, {recite.MaddSilahShort, recite.MaddSilahLong},
		{recite.MaddTabii, recite.Qalqalah}, {recite.MaddTabii, recite.NoonIkhfa}, {recite.MaddTabii, recite.SilentLetter},
		{recite.HeavyRa, recite.LightRa}, {recite.LightRa, recite.HeavyRa}, {recite.HeavyRa, recite.HeavyRaSakinah},
		{recite.LightRaSakinah, recite.LightRa},
	} {
		try(c.from.String()+" turned to "+c.to.String(), c.from, func(x recite.Event) (recite.Event, bool) {
			x.Rule = c.to
			return x, true
		})
	}
}

// judge returns the number of places that do not agree in verse v and the two beside it.
func judge(tx *mushaf.Text, e Engine, v int) int {
	b := newBench(nil)
	signsOf(b, tx, e, max(v-1, 0), min(v+2, len(tx.Verses)))
	n := 0
	for _, r := range b.close() {
		n += r.Unexplained
	}
	return n
}

// An exception that explains nothing is a fault itself.
func TestUnusedException(t *testing.T) {
	b := newBench([]Exception{{"signs: maddah", "1:1", 1, "none"}, {"no such witness", "1:1", 1, "none"}})
	b.witness("signs: maddah").same("1:2", 1, "", "x", "x")
	rs := b.close()
	if len(rs) != 2 || rs[0].Unexplained != 1 || rs[1].Unexplained != 1 {
		t.Errorf("%+v", rs)
	}
}

func TestRunPrintsATable(t *testing.T) {
	var w bytes.Buffer
	ok, err := Run(&w, os.DirFS(textDir))
	if !ok || err != nil {
		t.Fatalf("ok %v, error %v\n%s", ok, err, w.String())
	}
	for _, want := range []string{"unexplained", "signs: tanween", "the two poems", "known counts", "second text"} {
		if !strings.Contains(w.String(), want) {
			t.Errorf("the table lacks %q:\n%s", want, w.String())
		}
	}
	if _, err := Run(&w, os.DirFS("nowhere")); err == nil {
		t.Error("a folder without a text is no error")
	}
}
