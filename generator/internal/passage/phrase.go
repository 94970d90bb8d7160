package passage

import "sutur/generator/internal/mushaf"

// End says what comes after a phrase's last word.
type End uint8

// The ends of phrases. A Split is no place to stop or to start: a long stretch without a permitted
// stop is parted there so that no phrase is longer than LongestPhrase.
const (
	Split    End = iota
	PauseEnd     // a pause sign within the verse at which a reader may stop
	VerseEnd
	SurahEnd // the last word of a surah
)

// LongestPhrase is the most words of a phrase.
const LongestPhrase = 12

// noStop is the sign for "do not stop here".
const noStop = '\u06D9'

// mayStop reports whether the reader may stop at the pause sign of w: any sign but the one that
// forbids it. The small seen of a silence is no stop: it is read without taking breath.
func mayStop(w *mushaf.Word) bool {
	return mushaf.IsPause(w.Pause) && w.Pause != noStop
}

// cut appends the phrases of one verse: the number of words of each, and its end.
func cut(dst []piece, v *mushaf.Verse, lastOfSurah bool) []piece {
	from := 0
	for i := range v.Words {
		end := Split
		switch {
		case i == len(v.Words)-1 && lastOfSurah:
			end = SurahEnd
		case i == len(v.Words)-1:
			end = VerseEnd
		case mayStop(&v.Words[i]):
			end = PauseEnd
		default:
			continue
		}
		dst = part(dst, i+1-from, end)
		from = i + 1
	}
	return dst
}

type piece struct {
	words int
	end   End
}

// part splits a stretch of n words into pieces as equal as can be, the longer ones first.
func part(dst []piece, n int, end End) []piece {
	k := (n + LongestPhrase - 1) / LongestPhrase
	for i := range k {
		p := piece{n/k + b2i[int](i < n%k), Split}
		if i == k-1 {
			p.end = end
		}
		dst = append(dst, p)
	}
	return dst
}

func b2i[T int | int8 | uint8](b bool) T {
	if b {
		return 1
	}
	return 0
}
