package verify

import (
	"sort"
	"strings"

	"sutur/generator/internal/poem"
	"sutur/generator/internal/recite"
)

// Witness 2: the letter sets, each worked out from the words of the line that teaches it.
//
// The lines are in package poem, from memory. The check does not rest on memory alone: the sets
// must also part the 28 letters among themselves, as the poems say they do.

// alphabet is the 28 letters; the first is the hamza, which the poems write as an alif.
const alphabet = "ءبتثجحخدذرزسشصضطظعغفقكلمنهوي"

// poemLine is one line and how its letters are taken out of it.
type poemLine struct {
	id    string // of the line in package poem
	words string // the words of it that hold the letters
	take  func(words string) string
	rules []recite.RuleID
}

var poemLines = []poemLine{
	{"tuhfah-8", "همز فهاء عين حاء غين خاء", named, ids(recite.NoonIzhar)},
	{"tuhfah-10", "ينمو", all, ids(recite.NoonIdghamGhunnah)},
	{"tuhfah-12", "اللام والرا", named, ids(recite.NoonIdgham)},
	{"tuhfah-13", "الباء", named, ids(recite.NoonIqlab)},
	{"tuhfah-16", "صف ذا ثنا كم جاد شخص قد سما دم طيبا زد في تقى ضع ظالما", initials, ids(recite.NoonIkhfa)},
	{"tuhfah-17", "ميما نونا", named, ids(recite.Ghunnah)},
	{"tuhfah-20", "الباء", named, ids(recite.MeemIkhfa)},
	{"tuhfah-21", "ميم", named, ids(recite.MeemIdgham)}, // its like: the meem of line 18
	{"tuhfah-22", "باء ميم", rest, ids(recite.MeemIzhar)},
	{"tuhfah-25", "ابغ حجك وخف عقيمه", all, ids(recite.MoonLam)},
	{"tuhfah-27", "طب ثم صل رحما تفز ضف ذا نعم دع سوء ظن زر شريفا للكرم", initials, ids(recite.SunLam)},
	{"tuhfah-54", "كم عسل نقص", all, ids(recite.MaddLazimLetter)},
	{"jazari-22", "خص ضغط قظ", all, ids(recite.HeavyLetter)},
	{"jazari-24", "قطب جد", all, ids(recite.Qalqalah)},
	{"jazari-67", "يومن", all, ids(recite.NoonIdghamGhunnah)},
	{"jazari-68", "ء ه ع ح غ خ ي و م ن ل ر ب", rest, ids(recite.NoonIkhfa)},
}

func ids(r ...recite.RuleID) []recite.RuleID { return r }

// all takes every letter of the words.
func all(words string) string { return set(words) }

// initials takes the first letter of every word.
func initials(words string) string {
	var out []rune
	for _, w := range strings.Fields(words) {
		out = append(out, []rune(w)[0])
	}
	return set(string(out))
}

// rest takes the letters of the alphabet that the words do not name.
func rest(words string) string {
	not := named(words)
	return set(strings.Map(func(r rune) rune {
		if strings.ContainsRune(not, r) {
			return -1
		}
		return r
	}, alphabet))
}

// letterNames are the names by which the lines call letters, with and without their hamza.
var letterNames = map[string]rune{
	"همز": 'ء', "هاء": 'ه', "عين": 'ع', "حاء": 'ح', "غين": 'غ', "خاء": 'خ', "لام": 'ل', "را": 'ر', "باء": 'ب', "ميم": 'م', "نون": 'ن',
}

// named takes the letters that the words name; a word of one letter is that letter. A conjunction,
// the article and the ending of the accusative are left out of account. An unknown name gives no
// letter, and so a set that cannot agree.
func named(words string) string {
	var out []rune
	for _, w := range strings.Fields(words) {
		if rs := []rune(w); len(rs) == 1 {
			out = append(out, rs[0])
			continue
		}
		for _, try := range []string{w, strings.TrimPrefix(w, "ف"), strings.TrimPrefix(strings.TrimPrefix(w, "و"), "ال"), strings.TrimSuffix(w, "ا")} {
			if r, ok := letterNames[try]; ok {
				out = append(out, r)
				break
			}
		}
	}
	return set(string(out))
}

// set puts letters in one order, each once, without spaces; alif in every seat is the hamza.
func set(s string) string {
	var out []rune
	for _, r := range s {
		switch r {
		case 'ا', 'أ', 'إ', 'آ':
			r = 'ء'
		case ' ':
			continue
		}
		if !strings.ContainsRune(string(out), r) {
			out = append(out, r)
		}
	}
	sort.Slice(out, func(i, j int) bool { return out[i] < out[j] })
	return string(out)
}

// partitions are rules that share out the 28 letters: every letter goes by exactly one of them. For
// the noon see Tuhfah 6 ("four rules"), for the meem 19 ("three only"), for the lam 24 ("two
// cases").
var partitions = []struct {
	name  string
	rules []recite.RuleID
}{
	{"the letters after a noon", ids(recite.NoonIzhar, recite.NoonIdghamGhunnah, recite.NoonIdgham, recite.NoonIqlab, recite.NoonIkhfa)},
	{"the letters after a meem", ids(recite.MeemIkhfa, recite.MeemIdgham, recite.MeemIzhar)},
	{"the letters after the article", ids(recite.SunLam, recite.MoonLam)},
}

func poems(b *bench, sets map[recite.RuleID]string) {
	s := b.witness("the two poems: letter sets")
	for _, l := range poemLines {
		line, _ := poem.Find(l.id)
		for _, id := range l.rules {
			s.same(line.Poem, line.Number, id.String(), l.take(l.words), set(sets[id]))
		}
	}
	for _, p := range partitions {
		together := ""
		for _, id := range p.rules {
			together += set(sets[id])
		}
		rs := []rune(together)
		sort.Slice(rs, func(i, j int) bool { return rs[i] < rs[j] })
		s.same(p.name, 0, "", set(alphabet), string(rs))
	}
}
