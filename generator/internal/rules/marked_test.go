package rules

import (
	"os"
	"strings"
	"testing"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

// bearer tells whether a letter of a word can be the one that is marked.
type bearer func(w mushaf.Word, l int) bool

func oneOf(runes ...rune) bearer {
	return func(w mushaf.Word, l int) bool { return strings.ContainsRune(string(runes), w.Letters[l].Rune) }
}

func bearing(m mushaf.Marks, runes ...rune) bearer {
	return func(w mushaf.Word, l int) bool { return oneOf(runes...)(w, l) && w.Letters[l].Has(m) }
}

func last(w mushaf.Word, l int) bool { return l == len(w.Letters)-1 }

// nSound is a noon, also the small one of 21:88, or a letter that bears a tanween.
func nSound(w mushaf.Word, l int) bool {
	return oneOf('ن', mushaf.SmallNoon)(w, l) || w.Letters[l].Has(mushaf.Tanween)
}

func smallMeem(w mushaf.Word, l int) bool {
	return w.Letters[l].Has(mushaf.MeemHigh | mushaf.MeemLow)
}

var (
	doubledLam = bearing(mushaf.Shadda, 'ل')
	small      = oneOf(mushaf.SmallWaw, mushaf.SmallYa)
	long       = oneOf('ا', 'و', 'ي', 'ى', mushaf.SmallAlif, mushaf.SmallWaw, mushaf.SmallYa, mushaf.SmallYaTop)
)

const noonOrTanween = "Mark the noon, or the letter that bears the tanween."

// marked holds words of Short, and the letters that they speak of.
var marked = map[recite.RuleID]struct {
	says string
	fits bearer
}{
	recite.HeavyLam:          {"Mark the lam with the shadda.", doubledLam},
	recite.LightLam:          {"Mark the lam with the shadda.", doubledLam},
	recite.SunLam:            {"Mark the lam.", oneOf('ل')},
	recite.SilentLetter:      {"Mark the letter that is not read.", oneOf('ا', 'و', 'ي', 'ى')},
	recite.NoonIzhar:         {noonOrTanween, nSound},
	recite.NoonIdghamGhunnah: {"the mark goes to the noon, or to the letter that bears the tanween.", nSound},
	recite.NoonIdgham:        {noonOrTanween, nSound},
	recite.NoonIkhfa:         {noonOrTanween, nSound},
	recite.NoonIqlab:         {"Mark the letter that bears it.", smallMeem},
	recite.MeemIdgham:        {"the mark goes to the first.", oneOf('م')},
	recite.MaddTabii:         {"Mark the alif, waw, ya or small alif.", long},
	recite.MaddBadal:         {"Mark the vowel.", long},
	recite.MaddIwad:          {"Mark the alif, or the ya written in its place.", oneOf('ا', 'ى')},
	recite.MaddSilahShort:    {"Mark the small letter.", small},
	recite.MaddSilahLong:     {"Mark the small letter.", small},
	recite.MaddMuttasil:      {"Mark the vowel.", long},
	recite.MaddMunfasil:      {"Mark the vowel.", long},
	recite.MaddLazim:         {"Mark the vowel.", long},
	recite.MaddArid:          {"Mark the vowel.", long},
	recite.MaddLin:           {"Mark the waw or ya.", oneOf('و', 'ي')},
	recite.PauseSign:         {"Mark the last letter of the word.", last},
	recite.Sakt:              {"Mark the last letter of the word.", last},
	recite.Sajdah:            {"Mark the last letter of the verse.", last},
}

// TestLetterMarked: the letter to mark, as a rule's words name it, is that of the engine, in the
// whole text. Left out are the letters that open surahs, which are read by their names, and the
// long vowel of a start, which a hamza turns into.
func TestLetterMarked(t *testing.T) {
	text, err := mushaf.Load(os.DirFS("../../../rules-content/text"))
	if err != nil {
		t.Fatal(err)
	}
	list := projectRules(t)
	engine := recite.New(text)
	seen := map[recite.RuleID]int{}
	for v, verse := range text.Verses {
		for _, e := range engine.Verse(nil, v) {
			c, ok := marked[e.Rule]
			w := verse.Words[e.Word]
			if !ok || e.Unwritten || e.Rule == recite.MaddBadal && e.When == recite.Start || !voweled(w) {
				continue
			}
			seen[e.Rule]++
			if !c.fits(w, int(e.Letter)) || e.Rule == recite.Sajdah && int(e.Word) != len(verse.Words)-1 {
				t.Errorf("%d:%d word %d: %s is on letter %d", verse.Surah, verse.Ayah, e.Word+1, e.Rule, e.Letter+1)
			}
		}
	}
	for r, c := range marked {
		if !strings.Contains(list[r].Short, c.says) || seen[r] == 0 {
			t.Errorf("%s does not say %q, or acts nowhere: %d places", r, c.says, seen[r])
		}
	}
}
