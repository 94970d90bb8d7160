package lesson

import (
	"slices"

	"sutur/generator/internal/recite"
)

// letterNames are the letters of the alphabet by the names that lessons use, for single letters in
// a sentence.
var letterNames = map[string]rune{
	"hamza": 'ء', "alif": 'ا', "ba": 'ب', "ta": 'ت', "tha": 'ث', "jeem": 'ج', "ha-throat": 'ح', "kha": 'خ', "dal": 'د', "dhal": 'ذ',
	"ra": 'ر', "zay": 'ز', "seen": 'س', "sheen": 'ش', "sad": 'ص', "dad": 'ض', "ta-heavy": 'ط', "za-heavy": 'ظ', "ayn": 'ع',
	"ghayn": 'غ', "fa": 'ف', "qaf": 'ق', "kaf": 'ك', "lam": 'ل', "meem": 'م', "noon": 'ن', "ha": 'ه', "waw": 'و', "ya": 'ي',
	"ta-marbuta": 'ة', "alif-maqsura": 'ى', "alif-wasla": 'ٱ',
}

// signs are the signs of the text by name. A sign that needs a letter below it stands on a stretch
// (tatweel).
var signs = map[string]string{
	"fatha": "ـَ", "damma": "ـُ", "kasra": "ـِ", "sukun": "ـۡ", "shadda": "ـّ", "maddah": "ـٓ",
	"tanween-fatha": "ـً", "tanween-damma": "ـٌ", "tanween-kasra": "ـٍ",
	"open-fatha": "ـࣰ", "open-damma": "ـࣱ", "open-kasra": "ـࣲ",
	"meem-high": "ـۢ", "meem-low": "ـۭ", "round-zero": "ـ۟", "upright-zero": "ـ۠",
	"small-alif": "ـٰ", "small-waw": "ـۥ", "small-ya": "ـۦ", "small-seen": "ـۜ",
	"must-stop": "ـۘ", "no-stop": "ـۙ", "stop-or-on": "ـۚ", "better-on": "ـۖ", "better-stop": "ـۗ", "one-of-two": "ـۛ",
	"sajdah": "۩", "quarter": "۞",
}

// letterSet returns the letters that decide a rule, in the order of the alphabet: the engine's own
// set, or for the natural long vowel the three letters of length.
func letterSet(rule string) []rune {
	if rule == "madd-tabii" {
		return []rune{'ا', 'و', 'ي'}
	}
	r, ok := recite.ParseRule(rule)
	if !ok {
		return nil
	}
	return slices.Collect(func(yield func(rune) bool) {
		for _, l := range recite.Sets()[r] {
			if !yield(l) {
				return
			}
		}
	})
}
