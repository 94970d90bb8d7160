package mushaf

import (
	"fmt"
	"os"
	"strings"
	"testing"
	"testing/fstest"
)

func load(t testing.TB) *Text {
	t.Helper()
	tx, err := Load(os.DirFS("../../../rules-content/text"))
	if err != nil {
		t.Fatal(err)
	}
	return tx
}

// Counts that every print of this reading and numbering has. Common practice; the words are counted
// as text B (Quranic Universal Library) splits them.
func TestCounts(t *testing.T) {
	tx := load(t)
	words, sajdahs := 0, 0
	for _, v := range tx.Verses {
		words += len(v.Words)
		if v.Sajdah {
			sajdahs++
			if sign := strings.ContainsRune(v.Text, 0x06E9); !sign {
				t.Errorf("%d:%d is listed as a sajdah and bears no sign", v.Surah, v.Ayah)
			}
		} else if strings.ContainsRune(v.Text, 0x06E9) {
			t.Errorf("%d:%d bears a sajdah sign and is not listed", v.Surah, v.Ayah)
		}
	}
	last := tx.Verses[len(tx.Verses)-1]
	got := fmt.Sprint(len(tx.Surahs), len(tx.Verses), words, last.Page, last.Juz, last.Quarter, sajdahs)
	if want := "114 6236 77433 604 30 240 15"; got != want {
		t.Errorf("surahs, verses, words, pages, juz, quarters, sajdahs: %s; want %s", got, want)
	}
}

// The text is its letters and nothing between them but signs that belong to no letter.
func TestLettersCoverTheText(t *testing.T) {
	for _, v := range load(t).Verses {
		for i, w := range v.Words {
			at := w.Start
			for _, l := range w.Letters {
				if l.Start != at && !(at == w.Start && strings.HasPrefix(v.Text[at:], "۞") && l.Start == at+2) {
					t.Fatalf("%d:%d word %d: a gap before byte %d", v.Surah, v.Ayah, i+1, l.Start)
				}
				at = l.End
			}
			for _, r := range v.Text[at:w.End] {
				if !IsPause(r) && r != signSeen && r != signSajdah {
					t.Fatalf("%d:%d word %d: U+%04X is in no letter", v.Surah, v.Ayah, i+1, r)
				}
			}
		}
	}
}

func TestLoadRefuses(t *testing.T) {
	base := fstest.MapFS{}
	for _, n := range []string{TextFile, SurahFile, DigestFile, NumbersFile, OthersFile, ProstrationFile} {
		b, err := os.ReadFile("../../../rules-content/text/" + n)
		if err != nil {
			t.Fatal(err)
		}
		base[n] = &fstest.MapFile{Data: b}
	}
	for _, c := range []struct{ name, file, old, new, want string }{
		{"a vowel changed", TextFile, "2:2\tذَ", "2:2\tذِ", "2:2 is not the text"},
		{"a verse lost", TextFile, "\n2:3\t", "\n2:4\t", `found "2:4"; verse 2:3 is expected`},
		{"a digest changed", DigestFile, "\n1:1\t", "\n1:1\t0", "1:1 is not the text"},
		{"the whole digest changed", DigestFile, "whole\t", "whole\t0", "digests.txt:1"},
		{"a word of a prostration changed", ProstrationFile, "13:15\t1 2", "13:15\t1", "digests.txt:2"},
		{"a digest lost", DigestFile, "\n1:1\t", "\n1:2\t", `found "1:2"`},
		{"a page out of order", NumbersFile, `"pages":[1,8,13`, `"pages":[1,13,8`, "pages are not in order"},
		{"one digit of a page", NumbersFile, `"pages":[1,8,13`, `"pages":[1,8,14`, "numbers.json is not the file that was imported"},
		{"one letter of a surah's name", SurahFile, "Al-Fatihah", "Al-Fatiha", "surahs.txt is not the file that was imported"},
		{"a digest lost", OthersFile, "numbers.json\t", "", "numbers.json is not the file"},
		{"a surah lost", SurahFile, "\n2\t", "\n3\t", "surah 2 is expected"},
	} {
		t.Run(c.name, func(t *testing.T) {
			fs := fstest.MapFS{}
			for n, f := range base {
				fs[n] = f
			}
			s := string(base[c.file].Data)
			if !strings.Contains(s, c.old) {
				t.Fatalf("%s has no %q", c.file, c.old)
			}
			fs[c.file] = &fstest.MapFile{Data: []byte(strings.Replace(s, c.old, c.new, 1))}
			if _, err := Load(fs); err == nil || !strings.Contains(err.Error(), c.want) {
				t.Errorf("error %v; want one that says %q", err, c.want)
			}
		})
	}
}

func TestParseRefs(t *testing.T) {
	tx := load(t)
	for _, c := range []struct{ in, want string }{
		{"78", "5672-5711"},
		{"78:1", "5672-5672"},
		{"78:1-5", "5672-5676"},
		{"1-114", "0-6235"},
		{"78:38-79:5", "5709-5716"},
		{"1:1, 114:6", "0-0 6235-6235"},
		{"", "no reference given"},
		{"115", "there are surahs 1 to 114"},
		{"78:41", "surah 78 has verses 1 to 40"},
		{"78:0", "surah 78 has verses 1 to 40"},
		{"78:5-1", "ends before it begins"},
		{"naba", "is not a reference"},
		{"78:", "is not a reference"},
		{"78:1-", "is not a reference"},
		{"+78", "is not a reference"},
		{"78:1:2", "is not a reference"},
		{"٧٨", "is not a reference"},
	} {
		t.Run(c.in, func(t *testing.T) {
			rs, err := ParseRefs(tx, c.in)
			var got []string
			for _, r := range rs {
				got = append(got, fmt.Sprintf("%d-%d", r.First, r.Last))
			}
			s := strings.Join(got, " ")
			if err != nil {
				s = err.Error()
				if strings.Contains(s, "\n") {
					t.Errorf("the error has more than one line: %q", s)
				}
			}
			if err == nil && s != c.want || err != nil && !strings.Contains(s, c.want) {
				t.Errorf("got %q, want %q", s, c.want)
			}
		})
	}
}

func FuzzParseRefs(f *testing.F) {
	for _, s := range []string{"78:1-5", "1-114", "78", "2:255,3:1", "-", "::", "99999999999999999999"} {
		f.Add(s)
	}
	tx := load(f)
	f.Fuzz(func(t *testing.T, s string) {
		rs, err := ParseRefs(tx, s)
		for _, r := range rs {
			if err != nil || r.First < 0 || r.Last < r.First || r.Last >= len(tx.Verses) {
				t.Fatalf("%q gives %v, %v", s, r, err)
			}
		}
	})
}

func FuzzParseVerse(f *testing.F) {
	tx := load(f)
	for i := 0; i < len(tx.Verses); i += 500 {
		f.Add(tx.Verses[i].Text)
	}
	f.Add("\u0640\u0654\u064e\xff ")
	f.Add("\u0635\u06e3\u064e \u0645\u0640\u0670\u0653\u06e4")
	f.Fuzz(func(t *testing.T, s string) {
		v, _, bad := ParseVerse(s)
		if bad != 0 {
			return
		}
		for _, w := range v.Words {
			at := w.Start
			for _, l := range w.Letters {
				if l.Start < at || l.End <= l.Start || l.End > w.End {
					t.Fatalf("%q: letter %v outside its word %v", s, l, w)
				}
				at = l.End
			}
		}
	})
}

func BenchmarkLoad(b *testing.B) {
	for b.Loop() {
		load(b)
	}
}
