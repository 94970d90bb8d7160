// Package mushaf holds the text of the Qur'an as verses, words and letters, exactly as the files of
// rules-content/text have it.
//
// Load reads one verse a line, checks every verse, the whole, and the names and numbers beside it
// against the digests that were written when the text was imported, joins the page, juz, quarter
// and sajdah numbers, and splits words into letters. Nothing in this package, or after it, changes
// the text: what is shown is Verse.Text, byte for byte.
package mushaf

import (
	"crypto/sha256"
	"encoding/json"
	"fmt"
	"io/fs"
	"strconv"
	"strings"
)

// Word is one written word. Start and End are byte offsets into Verse.Text and take in signs that
// belong to no letter (pause sign, ۞, ۩). Pause is the printed sign after the word: 0, U+06D6–06DB,
// or U+06DC for a short silence.
type Word struct {
	Start, End int32
	Letters    []Letter
	Pause      rune
	Silence    bool // a small seen over the word's end asks for a silence without breath
	Sajdah     bool
	Lined      bool // one of the words of a prostration, over which the print draws a line
}

// Verse is one verse. Page (1–604), Juz (1–30) and Quarter (hizb quarters, 1–240) are those of its
// first letter.
type Verse struct {
	Surah, Ayah        int
	Text               string
	Words              []Word
	Page, Juz, Quarter int
	Sajdah             bool
	Digest             [32]byte // SHA-256 of Text
}

// Surah is one surah. First is the index of its first verse in Text.Verses, Count its number of
// verses. Arabic and Latin names are those of the text's source.
type Surah struct {
	Number        int
	Arabic, Latin string
	First, Count  int
}

// Text is the whole text in order: 114 surahs, 6,236 verses.
type Text struct {
	Verses []Verse
	Surahs []Surah
	Digest [32]byte // SHA-256 of all verse texts, each followed by a line feed
}

// Numbers are the page, juz, quarter and sajdah places as lists of verse numbers from 1 to 6236.
type Numbers struct {
	Source   string `json:"source"`
	Pages    []int  `json:"pages"`
	Juz      []int  `json:"juz"`
	Quarters []int  `json:"quarters"`
	Sajdahs  []int  `json:"sajdahs"`
}

// The files of the folder that Load reads.
const (
	TextFile    = "quran.txt"    // surah:verse TAB text, one verse a line
	SurahFile   = "surahs.txt"   // number TAB Arabic name TAB Latin name TAB verses
	DigestFile  = "digests.txt"  // SHA-256 of the whole and of ProstrationFile, then surah:verse TAB SHA-256
	NumbersFile = "numbers.json" // Numbers
	OthersFile  = "files.txt"    // name TAB SHA-256 of SurahFile and NumbersFile

	ProstrationFile = "prostrations.txt" // surah:verse TAB words from 1 that bear the line of a prostration
)

// Load reads and verifies the text in dir. Any difference from the digests, and any rune that has
// no place in a word, is an error that names file, line and verse.
func Load(dir fs.FS) (*Text, error) {
	t := &Text{}
	if err := t.readSurahs(dir); err != nil {
		return nil, err
	}
	raw, err := fs.ReadFile(dir, TextFile)
	if err != nil {
		return nil, fmt.Errorf("read the text: %w", err)
	}
	if err := t.readVerses(string(raw)); err != nil {
		return nil, err
	}
	if err := t.checkDigests(dir); err != nil {
		return nil, err
	}
	if err := t.joinNumbers(dir); err != nil {
		return nil, err
	}
	if err := checkOthers(dir); err != nil {
		return nil, err
	}
	if err := t.split(); err != nil {
		return nil, err
	}
	return t, t.markLines(dir)
}

// Others returns what OthersFile says of the files that hold no verses.
func Others(surahs, numbers []byte) []byte {
	return fmt.Appendf(nil, "%s\t%x\n%s\t%x\n", SurahFile, sha256.Sum256(surahs), NumbersFile, sha256.Sum256(numbers))
}

// checkOthers holds the files that have no verses against their digests.
func checkOthers(dir fs.FS) error {
	var files [3][]byte
	for i, name := range []string{SurahFile, NumbersFile, OthersFile} {
		var err error
		if files[i], err = fs.ReadFile(dir, name); err != nil {
			return fmt.Errorf("read the digests: %w", err)
		}
	}
	want := strings.Split(string(files[2]), "\n")
	for i, line := range strings.Split(string(Others(files[0], files[1])), "\n") {
		if i >= len(want) || line != want[i] {
			name, sum, _ := strings.Cut(line, "\t")
			return fmt.Errorf("%s is not the file that was imported (SHA-256 %s); restore it", name, sum)
		}
	}
	return nil
}

func (t *Text) readSurahs(dir fs.FS) error {
	raw, err := fs.ReadFile(dir, SurahFile)
	if err != nil {
		return fmt.Errorf("read the surahs: %w", err)
	}
	first := 0
	for i, line := range strings.Split(strings.TrimSuffix(string(raw), "\n"), "\n") {
		f := strings.Split(line, "\t")
		if len(f) != 4 {
			return fmt.Errorf("%s:%d: %d fields; number, Arabic name, Latin name and verses are expected", SurahFile, i+1, len(f))
		}
		n, err1 := strconv.Atoi(f[0])
		count, err2 := strconv.Atoi(f[3])
		if err1 != nil || err2 != nil || n != i+1 || count < 1 {
			return fmt.Errorf("%s:%d: surah %q with %q verses; surah %d is expected", SurahFile, i+1, f[0], f[3], i+1)
		}
		t.Surahs = append(t.Surahs, Surah{n, f[1], f[2], first, count})
		first += count
	}
	return nil
}

func (t *Text) readVerses(raw string) error {
	line := 0
	for _, s := range t.Surahs {
		for a := 1; a <= s.Count; a++ {
			line++
			l, rest, ok := strings.Cut(raw, "\n")
			if !ok {
				return fmt.Errorf("%s:%d: the text ends before %d:%d", TextFile, line, s.Number, a)
			}
			raw = rest
			ref, text, ok := strings.Cut(l, "\t")
			if want := fmt.Sprintf("%d:%d", s.Number, a); !ok || ref != want {
				return fmt.Errorf("%s:%d: found %q; verse %s is expected", TextFile, line, ref, want)
			}
			t.Verses = append(t.Verses, Verse{Surah: s.Number, Ayah: a, Text: text, Digest: sha256.Sum256([]byte(text))})
		}
	}
	if raw != "" {
		return fmt.Errorf("%s:%d: lines after the last verse", TextFile, line+1)
	}
	t.Digest = t.whole()
	return nil
}

func (t *Text) whole() (sum [32]byte) {
	h := sha256.New()
	for i := range t.Verses {
		h.Write([]byte(t.Verses[i].Text))
		h.Write([]byte{'\n'})
	}
	h.Sum(sum[:0])
	return sum
}

func (t *Text) joinNumbers(dir fs.FS) error {
	raw, err := fs.ReadFile(dir, NumbersFile)
	if err != nil {
		return fmt.Errorf("read the numbers: %w", err)
	}
	var n Numbers
	if err := json.Unmarshal(raw, &n); err != nil {
		return fmt.Errorf("%s: %w", NumbersFile, err)
	}
	for _, list := range []struct {
		name string
		from []int
		set  func(v *Verse, k int)
	}{
		{"pages", n.Pages, func(v *Verse, k int) { v.Page = k }},
		{"juz", n.Juz, func(v *Verse, k int) { v.Juz = k }},
		{"quarters", n.Quarters, func(v *Verse, k int) { v.Quarter = k }},
	} {
		if len(list.from) == 0 || list.from[0] != 1 {
			return fmt.Errorf("%s: %s do not begin at verse 1", NumbersFile, list.name)
		}
		k := 0
		for i := range t.Verses {
			for k < len(list.from) && list.from[k] == i+1 {
				k++
			}
			list.set(&t.Verses[i], k)
		}
		if k != len(list.from) {
			return fmt.Errorf("%s: %s are not in order within the text", NumbersFile, list.name)
		}
	}
	for _, s := range n.Sajdahs {
		if s < 1 || s > len(t.Verses) {
			return fmt.Errorf("%s: sajdah at verse %d; 1 to %d are accepted", NumbersFile, s, len(t.Verses))
		}
		t.Verses[s-1].Sajdah = true
	}
	return nil
}

// split parts every verse into words and letters. All words share one array, and all letters
// another.
func (t *Text) split() error {
	words, letters := make([]Word, 0, 78000), make([]Letter, 0, 340000)
	for i := range t.Verses {
		v := &t.Verses[i]
		var bad rune
		var at int
		if words, letters, at, bad = appendWords(words, letters, v); bad != 0 {
			return fmt.Errorf("%s: U+%04X in word %d of %d:%d has no place there", TextFile, bad, at, v.Surah, v.Ayah)
		}
	}
	return nil
}

func appendWords(words []Word, letters []Letter, v *Verse) (_ []Word, _ []Letter, at int, bad rune) {
	first := len(words)
	for start := int32(0); start <= int32(len(v.Text)); {
		end := int32(len(v.Text))
		if sp := strings.IndexByte(v.Text[start:], ' '); sp >= 0 {
			end = start + int32(sp)
		}
		w := Word{Start: start, End: end}
		from := len(letters)
		if letters, w.Pause, w.Sajdah, bad = appendLetters(letters, v.Text, start, end); bad == 0 && len(letters) == from {
			bad = ' '
		}
		if bad != 0 {
			return words, letters, len(words) - first + 1, bad
		}
		w.Letters = letters[from:len(letters):len(letters)]
		w.Silence = strings.ContainsRune(v.Text[w.Letters[len(w.Letters)-1].End:end], signSeen)
		words = append(words, w)
		start = end + 1
	}
	v.Words = words[first:len(words):len(words)]
	return words, letters, 0, 0
}

// ParseVerse splits text as Load would, without numbers or digests. It is for tests and for
// fuzzing; bad is the first rune that has no place in the word numbered at (from 1), or 0.
func ParseVerse(text string) (v Verse, at int, bad rune) {
	v = Verse{Text: text, Digest: sha256.Sum256([]byte(text))}
	_, _, at, bad = appendWords(nil, nil, &v)
	return v, at, bad
}

// Find returns the index in Verses of verse surah:ayah, or -1 where there is none.
func (t *Text) Find(surah, ayah int) int {
	if surah < 1 || surah > len(t.Surahs) || ayah < 1 || ayah > t.Surahs[surah-1].Count {
		return -1
	}
	return t.Surahs[surah-1].First + ayah - 1
}
