package recite

import "sutur/generator/internal/mushaf"

// markKind names what the letters of a word do not tell and its place in the text does.
type markKind uint8

const (
	noMark       markKind = iota
	sadSeen               // sad read as seen
	sadEither             // sad or seen, sad by default
	sadPlain              // sad, where its sisters are read as seen
	openingClear          // the noon of the name stays clear when read on
	raStopHeavy           // both ways at a stop, heavy by default
	raStopLight           // both ways at a stop, light by default
	raEither              // both ways always, light by default
	alifEither            // stopped on with or without its alif
	yaEither              // stopped on with or without its ya
	saktEither            // the silence is one of two ways, and the default
	ishmamNoon            // the noon is said with the lips rounded
)

// place is one marked word: verse and word as a reference gives them (from 1).
type place struct {
	surah, ayah, word int
	kind              markKind
}

// places lists the words that go by transmission and not by their letters. Values as in RULES.md;
// the default of the ras accepted both ways is from memory, after Ibn al-Jazari's preference.
var places = []place{
	{2, 245, 14, sadSeen},
	{7, 69, 22, sadSeen},
	{10, 87, 8, raStopHeavy}, // misr
	{11, 81, 9, raStopLight}, // fa-asri: the ya that fell is heard in the light ra
	{12, 11, 6, ishmamNoon},
	{12, 21, 5, raStopHeavy},  // misr
	{12, 99, 10, raStopHeavy}, // misr
	{15, 65, 1, raStopLight},  // fa-asri
	{20, 77, 6, raStopLight},  // an asri
	{26, 52, 5, raStopLight},  // an asri
	{26, 63, 11, raEither},    // firq: the raised letter after it has kasra
	{27, 36, 8, yaEither},
	{34, 12, 10, raStopLight}, // al-qitr
	{36, 1, 1, openingClear},
	{43, 51, 10, raStopHeavy}, // misr
	{44, 23, 1, raStopLight},  // fa-asri
	{52, 37, 7, sadEither},
	{54, 16, 4, raStopLight}, // wa-nudhur: the ya that fell
	{54, 18, 6, raStopLight},
	{54, 21, 4, raStopLight},
	{54, 30, 4, raStopLight},
	{54, 37, 9, raStopLight},
	{54, 39, 3, raStopLight},
	{68, 1, 1, openingClear},
	{69, 28, 4, saktEither}, // the other way merges the ha
	{76, 4, 4, alifEither},
	{88, 22, 3, sadPlain},
	{89, 4, 3, raStopLight}, // yasr: the ya that fell
}

type wordMark struct {
	word uint16
	kind markKind
}

// markWords lays the places out by verse index.
func markWords(t *mushaf.Text) ([]wordMark, []int32) {
	byVerse := map[int][]wordMark{}
	for _, p := range places {
		if v := t.Find(p.surah, p.ayah); v >= 0 {
			byVerse[v] = append(byVerse[v], wordMark{uint16(p.word - 1), p.kind})
		}
	}
	var marks []wordMark
	from := make([]int32, len(t.Verses)+1)
	for v := range t.Verses {
		from[v] = int32(len(marks))
		marks = append(marks, byVerse[v]...)
	}
	from[len(t.Verses)] = int32(len(marks))
	return marks, from
}
