package site

import (
	"bytes"
	"crypto/sha256"
	"encoding/base64"
	"encoding/hex"
	"encoding/json"
	"sync"

	"github.com/klauspost/compress/gzip"

	"sutur/generator/internal/bundle"
	"sutur/generator/internal/colour"
	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
	"sutur/generator/internal/rules"
)

// DataVersion is the version of the data files' shape, the first field of the catalogue and a byte
// of every surah's file. A browser that finds another one refuses the data. A field more in the
// catalogue is no other shape: a page names its catalogue by digest, so the two are of one build,
// and another number would have every surah fetched anew.
const DataVersion = 4

// catalogue is data/catalogue.<hash>.json.gz: all that a page needs before it knows which verses it
// is to show.
type catalogue struct {
	Version    int            `json:"v"`
	TextDigest string         `json:"textDigest"`
	Surahs     []surahEntry   `json:"surahs"`
	Rules      []ruleEntry    `json:"rules"` // in the engine's order: events name rules by their index here
	Families   []family       `json:"families"`
	Groups     []rules.Group  `json:"groups"` // what a child may mark together, in the order shown
	Themes     themes         `json:"themes"`
	Details    []rules.Detail `json:"details"`  // by the engine's number
	Alphabet   string         `json:"alphabet"` // what the bytes of the surahs' files mean: code points first,
	Kinds      [][]int        `json:"kinds"`    // then kinds of events (surah.go)
	Juz        [][2]int       `json:"juz"`      // surah and verse each begins with
	Pages      [][2]int       `json:"pages"`
	Passages   string         `json:"passages"` // the passage index, beside the catalogue
	PassageSHA string         `json:"passagesSha"`
	Lessons    []lessonEntry  `json:"lessons"` // in teaching order
}

type surahEntry struct {
	Number int    `json:"n"`
	Arabic string `json:"ar"`
	Latin  string `json:"la"`
	Count  int    `json:"count"`
	SHA    string `json:"sha"` // SHA-256 of what is in its file, in base64; the file's name begins with the number
}

// ruleEntry is all that the browser knows about a rule; see rules.Rule.
type ruleEntry struct {
	ID       string            `json:"id"`
	Name     string            `json:"name"`
	Arabic   string            `json:"ar"`
	Translit string            `json:"tr"`
	Family   string            `json:"family"`
	Needs    []string          `json:"needs"`
	Counts   []int             `json:"counts"`
	Setting  string            `json:"setting,omitempty"`
	Role     string            `json:"role,omitempty"`
	Alike    []string          `json:"alike,omitempty"`   // rules that count as right where this one is marked by ear
	Sound    string            `json:"sound,omitempty"`   // what is heard in all of them
	OnCause  string            `json:"onCause,omitempty"` // said of a mark on the letter that causes it, where that is right too
	Short    string            `json:"short"`
	Stuck    string            `json:"stuck,omitempty"` // what to say to a child who finds none
	Why      string            `json:"why"`
	Cases    map[string]string `json:"cases,omitempty"`
	Lesson   string            `json:"lesson"`            // id of the lesson that teaches it
	Letters  string            `json:"letters,omitempty"` // the letters that decide it, where a set of letters does
	Example  [3]int            `json:"at"`                // a short word in which it acts: surah, verse, word from 0
}

type family struct {
	ID    string `json:"id"`
	Light string `json:"light"`
	Dark  string `json:"dark"`
	Form  string `json:"form"`
}

// themes are the pages and their ink, for choosing colours that differ from them.
type themes struct {
	Light theme `json:"light"`
	Dark  theme `json:"dark"`
}

type theme struct {
	Paper string `json:"paper"` // #rrggbb
	Ink   string `json:"ink"`
}

// dataFiles makes the files of all surahs, on every core, and the catalogue that names them. It
// returns where the catalogue is, and the lines that each lesson proposes, which follow from the
// passage index. It fails if the text has more than the files can say.
func dataFiles(s Source) (files []bundle.File, where dataFile, try [][]Try, err error) {
	c := catalogue{Version: DataVersion, TextDigest: hex.EncodeToString(s.Text.Digest[:]), Details: s.Details, Groups: s.Groups}
	c.Surahs = make([]surahEntry, len(s.Text.Surahs))
	files = make([]bundle.File, len(s.Text.Surahs))
	var passages bundle.File
	var wg sync.WaitGroup
	wg.Go(func() {
		try = tryFor(s, s.Passages)
		passages = c.addPassages(s)
	})
	events := make([][]recite.Event, len(files))
	each(len(files), func() func(int) {
		e := s.Engine()
		return func(i int) {
			for v := range s.Text.Surahs[i].Count {
				events[i] = e.Verse(events[i], s.Text.Surahs[i].First+v)
			}
		}
	})
	c.Rules = ruleEntries(s, examples(s.Text, events))
	code, err := newCode(s.Text, events)
	if err == nil {
		code.describe(&c)
		each(len(files), func() func(int) {
			return func(i int) { files[i], c.Surahs[i] = code.surah(s.Text, i, events[i]) }
		})
	}
	c.Themes = themes{theme{colour.PaperLight, colour.InkLight}, theme{colour.PaperDark, colour.InkDark}}
	for _, f := range s.Families {
		c.Families = append(c.Families, family{f.Name, f.Light, f.Dark, f.Form})
	}
	c.Juz = begins(s.Text, func(v mushaf.Verse) int { return v.Juz })
	c.Pages = begins(s.Text, func(v mushaf.Verse) int { return v.Page })
	wg.Wait()
	files = append(files, passages)
	raw := encode(c)
	where = dataFile{"data/catalogue." + hash(raw) + ".json.gz", digest(raw)}
	return append(files, bundle.File{Name: where.name, Data: Compress(raw)}), where, try, err
}

// dataFile is a compressed file and the SHA-256 of what is in it, in base64.
type dataFile struct{ name, sha string }

func ruleEntries(s Source, at [recite.NumRules][3]int) []ruleEntry {
	lessons := map[string]string{}
	for _, l := range s.Lessons {
		for _, r := range l.Rules {
			lessons[r] = l.ID
		}
	}
	sets := recite.Sets()
	list := make([]ruleEntry, len(s.Rules))
	for i, r := range s.Rules {
		list[i] = ruleEntry{
			ID: r.ID, Name: r.Name, Arabic: r.Arabic, Translit: r.Translit, Family: r.Family,
			Needs: append([]string{}, r.Needs...), Counts: append([]int{}, r.Counts...), Setting: r.Setting, Role: r.Role,
			Alike: r.HeardAlike(), Sound: r.Sound, OnCause: r.OnCause, Short: r.Short, Stuck: r.Stuck, Why: r.Why, Cases: r.Cases,
			Lesson: lessons[r.ID], Letters: sets[recite.RuleID(i)], Example: at[i],
		}
	}
	return list
}

// begins lists surah and verse of the first verse of every part that number counts from 1. A part
// in which no verse begins gets the verse after it.
func begins(t *mushaf.Text, number func(mushaf.Verse) int) [][2]int {
	var list [][2]int
	for _, v := range t.Verses {
		for len(list) < number(v) {
			list = append(list, [2]int{v.Surah, v.Ayah})
		}
	}
	return list
}

// encode returns v as JSON, with nothing but what JSON demands escaped.
func encode(v any) []byte {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	if err := e.Encode(v); err != nil {
		panic(err) // our own types always encode
	}
	return bytes.TrimSuffix(b.Bytes(), []byte{'\n'})
}

// digest returns the SHA-256 of data in base64.
func digest(data []byte) string {
	sum := sha256.Sum256(data)
	return base64.StdEncoding.EncodeToString(sum[:])
}

// hash returns the part of a content's SHA-256 that goes into names: ten hexadecimal digits of the
// content before compression, so that another compressor gives the same name.
func hash(data []byte) string {
	sum := sha256.Sum256(data)
	return hex.EncodeToString(sum[:5])
}

// level of compression: the level below takes an eighth of the time and gives 1.5 percent more
// bytes.
const level = 9

var zippers = sync.Pool{New: func() any {
	w, err := gzip.NewWriterLevel(nil, level)
	if err != nil {
		panic(err) // the level is a constant
	}
	return w
}}

// Compress returns data in gzip form, with no time and no name in it, so that the same data gives
// the same bytes. The compressor is a module's, pinned by go.mod: what the standard library's makes
// may change with every release of Go (TestCompressor).
func Compress(data []byte) []byte {
	var buf bytes.Buffer
	w := zippers.Get().(*gzip.Writer)
	defer zippers.Put(w)
	w.Reset(&buf)
	if _, err := w.Write(data); err != nil {
		panic(err) // a buffer takes everything
	}
	if err := w.Close(); err != nil {
		panic(err)
	}
	return buf.Bytes()
}
