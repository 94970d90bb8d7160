package recite

import "sutur/generator/internal/mushaf"

// Blank returns a copy of t in which the letters no longer carry the signs that the print adds for
// the reading: every sukun and maddah, the open form of tanween, the small meem, the shadda that
// merging puts on a word's first letter, on a letter after the article's lam or after another
// vowelless consonant, and the round zero of an alif that cannot be long because no fatha stands
// before it. An engine over the copy must find what it finds in the text: so the signs are a
// witness and no input. Offsets and verse texts stay as they are.
func Blank(t *mushaf.Text) *mushaf.Text {
	b := *t
	b.Verses = append([]mushaf.Verse(nil), t.Verses...)
	for v := range b.Verses {
		words := append([]mushaf.Word(nil), b.Verses[v].Words...)
		for w := range words {
			words[w].Letters = blankWord(words[w].Letters)
		}
		b.Verses[v].Words = words
	}
	return &b
}

// NewBlank returns an engine over Blank(t).
func NewBlank(t *mushaf.Text) *Engine { return New(Blank(t)) }

func blankWord(letters []mushaf.Letter) []mushaf.Letter {
	out := append([]mushaf.Letter(nil), letters...)
	for i := range out {
		l := &out[i]
		l.Marks &^= mushaf.Sukun | mushaf.Maddah
		if l.Marks&smallM != 0 {
			switch {
			case l.Marks&mushaf.Fatha != 0:
				l.Marks = l.Marks&^mushaf.Fatha | mushaf.FathatanStacked
			case l.Marks&mushaf.Damma != 0:
				l.Marks = l.Marks&^mushaf.Damma | mushaf.DammatanStacked
			case l.Marks&mushaf.Kasra != 0:
				l.Marks = l.Marks&^mushaf.Kasra | mushaf.KasratanStacked
			}
			l.Marks &^= smallM
		}
		for _, p := range [...][2]mushaf.Marks{
			{mushaf.FathatanOpen, mushaf.FathatanStacked}, {mushaf.DammatanOpen, mushaf.DammatanStacked}, {mushaf.KasratanOpen, mushaf.KasratanStacked},
		} {
			if l.Marks&p[0] != 0 {
				l.Marks = l.Marks&^p[0] | p[1]
			}
		}
		if l.Marks&mushaf.Shadda != 0 && (i == 0 || bareConsonant(letters[i-1])) {
			l.Marks &^= mushaf.Shadda
		}
		if l.Rune == 'ا' && l.Marks&mushaf.RoundZero != 0 && i > 0 && letters[i-1].Marks&(anyFatha) == 0 && letters[i-1].Rune != mushaf.SmallAlif {
			l.Marks &^= mushaf.RoundZero
		}
	}
	return out
}

// bareConsonant reports whether the letter is a consonant printed without any sign: the print's way
// of showing that it merges. Waw and ya so printed are long vowels or seats, except where a ya is
// written twice (68:6).
func bareConsonant(l mushaf.Letter) bool {
	return l.Marks == 0 && l.Rune >= 'ب' && l.Rune <= 'ه'
}
