package mushaf

import "unicode/utf8"

// Marks is the set of signs that stand on one letter.
type Marks uint32

// The signs a letter can carry, named for what the reader sees.
const (
	Fatha           Marks = 1 << iota // U+064E
	Damma                             // U+064F
	Kasra                             // U+0650
	FathatanStacked                   // U+064B, one above the other: read clear
	DammatanStacked                   // U+064C
	KasratanStacked                   // U+064D
	FathatanOpen                      // U+08F0, side by side: merged or hidden
	DammatanOpen                      // U+08F1
	KasratanOpen                      // U+08F2
	Shadda                            // U+0651
	Sukun                             // U+06E1
	Maddah                            // U+0653
	HamzaAbove                        // U+0654
	HamzaBelow                        // U+0655
	RoundZero                         // U+06DF, never read
	UprightZero                       // U+06E0, read only at a stop
	MeemHigh                          // U+06E2
	MeemLow                           // U+06ED
	SeenMark                          // U+06DC over a sad: the seen is read
	SeenLow                           // U+06E3 under a sad: the sad is the better known reading
	ImalahMark                        // U+06EA
	IshmamMark                        // U+06EB
	TashilMark                        // U+06EC
)

// Tanween is every way a tanween is written other than a vowel with a small meem.
const Tanween = FathatanStacked | DammatanStacked | KasratanStacked | FathatanOpen | DammatanOpen | KasratanOpen

// Letters with a code point of their own that this package or its callers ask for by name.
const (
	Tatweel    = '\u0640'
	SmallAlif  = '\u0670'
	AlifWasla  = '\u0671'
	SmallWaw   = '\u06E5'
	SmallYa    = '\u06E6'
	SmallYaTop = '\u06E7'
	SmallNoon  = '\u06E8'

	signSeen    = '\u06DC'
	signSeenLow = '\u06E3'
	signQuarter = '\u06DE'
	signSajdah  = '\u06E9'
	sad         = '\u0635'
)

// Letter is one letter with its signs: the unit a child marks. Start and End are byte offsets into
// the verse's text; no pause sign lies between them. A small letter that stands on a stretch begins
// with the stretch: what is coloured or tapped for it is what the reader sees of it.
type Letter struct {
	Rune       rune
	Marks      Marks
	Start, End int32
}

// Has reports whether the letter carries any of the signs m.
func (l Letter) Has(m Marks) bool { return l.Marks&m != 0 }

func markOf(r rune) Marks {
	switch r {
	case 0x064E:
		return Fatha
	case 0x064F:
		return Damma
	case 0x0650:
		return Kasra
	case 0x064B:
		return FathatanStacked
	case 0x064C:
		return DammatanStacked
	case 0x064D:
		return KasratanStacked
	case 0x08F0:
		return FathatanOpen
	case 0x08F1:
		return DammatanOpen
	case 0x08F2:
		return KasratanOpen
	case 0x0651:
		return Shadda
	case 0x06E1:
		return Sukun
	case 0x0653:
		return Maddah
	case 0x0654:
		return HamzaAbove
	case 0x0655:
		return HamzaBelow
	case 0x06DF:
		return RoundZero
	case 0x06E0:
		return UprightZero
	case 0x06E2:
		return MeemHigh
	case 0x06ED:
		return MeemLow
	case 0x06EA:
		return ImalahMark
	case 0x06EB:
		return IshmamMark
	case 0x06EC:
		return TashilMark
	}
	return 0
}

// IsBase reports whether r is a letter by itself: U+0621–063A, U+0641–064A, alif wasla, or one of
// the small letters.
func IsBase(r rune) bool {
	switch {
	case r >= 0x0621 && r <= 0x063A, r >= 0x0641 && r <= 0x064A:
		return true
	case r == AlifWasla, r == SmallAlif, r == SmallWaw, r == SmallYa, r == SmallYaTop, r == SmallNoon:
		return true
	}
	return false
}

// IsPause reports whether r is a printed pause sign (U+06D6–06DB). The small seen of a silence is
// not one.
func IsPause(r rune) bool { return r >= 0x06D6 && r <= 0x06DB }

// appendLetters splits text[start:end], one word, into its letters. A tatweel carries a hamza and
// is a letter, or it is a stretch that belongs to the small letter after it. It returns the word's
// pause sign (0 for none; U+06DC where the small seen asks for a silence), whether ۩ stands at it,
// and the first rune that has no place in a word (0 for none).
func appendLetters(dst []Letter, text string, start, end int32) (_ []Letter, pause rune, sajdah bool, bad rune) {
	first := len(dst)
	stretch := int32(-1) // start of a tatweel that waits for its letter
	closed := false      // a pause sign has come: no sign may follow on the letter before
	for i := start; i < end; {
		r, size := utf8.DecodeRuneInString(text[i:end])
		at := i
		i += int32(size)
		switch {
		case r == Tatweel:
			if stretch >= 0 {
				return dst, pause, sajdah, r
			}
			stretch = at
		case stretch >= 0 && (r == 0x0654 || r == 0x0655):
			dst = append(dst, Letter{Tatweel, markOf(r), stretch, i})
			stretch, closed = -1, false
		case IsBase(r):
			if stretch >= 0 {
				at = stretch
				stretch = -1
			}
			dst = append(dst, Letter{r, 0, at, i})
			closed = false
		case r == signSeen && len(dst) > first && dst[len(dst)-1].Rune == sad:
			dst[len(dst)-1].Marks |= SeenMark
			dst[len(dst)-1].End = i
		case r == signSeenLow && len(dst) > first && dst[len(dst)-1].Rune == sad:
			dst[len(dst)-1].Marks |= SeenLow
			dst[len(dst)-1].End = i
		case r == signQuarter && len(dst) == first:
		case r == signSajdah && len(dst) > first:
			sajdah, closed = true, true
		case IsPause(r) && len(dst) > first:
			pause, closed = r, true // 36:52 has a silence and a pause sign: the sign that governs stopping wins
		case r == signSeen && len(dst) > first:
			if pause == 0 {
				pause = r
			}
			closed = true
		default:
			m := markOf(r)
			if m == 0 || len(dst) == first || closed || stretch >= 0 {
				return dst, pause, sajdah, r
			}
			dst[len(dst)-1].Marks |= m
			dst[len(dst)-1].End = i
		}
	}
	if stretch >= 0 {
		return dst, pause, sajdah, Tatweel
	}
	return dst, pause, sajdah, 0
}
