package importer

import (
	"crypto/sha256"
	"encoding/json"
	"fmt"
	"regexp"
	"strconv"
	"strings"

	"sutur/generator/internal/mushaf"
)

// Sources are the source files, byte for byte, and the reviewed list.
type Sources struct {
	A           []byte // quran-json 3.1.2, dist/quran.json
	B           []byte // quran-validator 1.3.0, data/quran-verses.json
	Numbers     []byte // quran-meta 6.0.17, src/lists/HafsLists.ts
	Corrections []byte // corrections.json
}

// SHA-256 of the three source files that were reviewed.
const (
	digestA       = "d8a8adff387f60ce3ff7dbe3238dd9b27120bfe29d8fcb07ad2e89cad37cefd4"
	digestB       = "bafbc2c057851847906cece33a3d6efb51657e85cf27b083e8a968d7210c1e7c"
	digestNumbers = "49ddb293c92c8fb8d15ffe7ca09f5dd4bfedb8eb58c777e826525d867557d616"
)

// Count is what one class of the conversion changed: its rule and how many places of the whole
// text.
type Count struct {
	Rule   string
	Places int
}

// Import returns the files of rules-content/text by name, and what each class changed. A source
// that is not the reviewed one is an error.
func Import(s Sources) (map[string][]byte, []Count, error) {
	for _, f := range []struct {
		name, want string
		data       []byte
	}{{"text A", digestA, s.A}, {"text B", digestB, s.B}, {"numbers", digestNumbers, s.Numbers}} {
		if got := fmt.Sprintf("%x", sha256.Sum256(f.data)); got != f.want {
			return nil, nil, fmt.Errorf("%s has SHA-256 %s; the reviewed file has %s", f.name, got, f.want)
		}
	}
	var a []surahA
	var b []verseB
	var list []Correction
	for _, f := range []struct {
		name string
		data []byte
		to   any
	}{{"text A", s.A, &a}, {"text B", s.B, &b}, {"corrections", s.Corrections, &list}} {
		if err := json.Unmarshal(f.data, f.to); err != nil {
			return nil, nil, fmt.Errorf("read %s: %w", f.name, err)
		}
	}
	files, counts, err := write(a, b, list)
	if err != nil {
		return nil, nil, err
	}
	if files[mushaf.NumbersFile], err = numbers(string(s.Numbers)); err != nil {
		return nil, nil, err
	}
	files[mushaf.OthersFile] = mushaf.Others(files[mushaf.SurahFile], files[mushaf.NumbersFile])
	return files, counts, nil
}

// numbers reads the lists of verse numbers that the source file declares.
func numbers(ts string) ([]byte, error) {
	n := mushaf.Numbers{Source: "quran-meta 6.0.17 (MIT), src/lists/HafsLists.ts"}
	for _, l := range []struct {
		name  string
		to    *[]int
		count int
		pad   int // entries before the first and after the last that are not places
	}{{"PageList", &n.Pages, 604, 1}, {"JuzList", &n.Juz, 30, 1}, {"HizbQuarterList", &n.Quarters, 240, 1}, {"SajdaList", &n.Sajdahs, 15, 0}} {
		m := regexp.MustCompile(`export const ` + l.name + `: AyahId\[\] = \[([0-9,\s]+)\]`).FindStringSubmatch(ts)
		if m == nil {
			return nil, fmt.Errorf("numbers: no list %s", l.name)
		}
		for _, f := range strings.FieldsFunc(m[1], func(r rune) bool { return r < '0' || r > '9' }) {
			k, _ := strconv.Atoi(f)
			*l.to = append(*l.to, k)
		}
		if len(*l.to) != l.count+2*l.pad {
			return nil, fmt.Errorf("numbers: %s has %d entries; %d are expected", l.name, len(*l.to), l.count+2*l.pad)
		}
		*l.to = (*l.to)[l.pad : l.pad+l.count]
	}
	out, err := json.Marshal(n)
	return append(out, '\n'), err
}
