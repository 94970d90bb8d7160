package e2e

import (
	"bytes"
	"crypto/sha256"
	"encoding/base64"
	"fmt"
	"net/http"
	"slices"
	"strings"
	"sync"
	"testing"

	"sutur/generator/internal/bundle"
)

// headLen is the length of a surah file's head: magic, version, and from the fifth byte on the
// digest of the text.
const headLen = 36

// swapped exchanges the first letter of a surah, and with it the digest in the file's head if asked
// to.
func swapped(t testing.TB, raw []byte, digest bool) []byte {
	t.Helper()
	text, err := theText()
	if err != nil {
		t.Fatal(err)
	}
	var old strings.Builder
	for _, v := range text.Verses[text.Find(surah, 1):][:text.Surahs[surah-1].Count] {
		old.WriteString(v.Text + "\n")
	}
	first := []rune(old.String())[0]
	changed := bytes.Clone(raw)
	changed[headLen]++ // the letter after it in the alphabet
	if digest {
		other := sha256.Sum256([]byte(strings.Replace(old.String(), string(first), string(first+1), 1)))
		copy(changed[4:], other[:])
	}
	return changed
}

// signed replaces the surah's file by one with all digests around it right: in the catalogue, by
// which it is named, and of the catalogue.
func signed(t testing.TB, files []bundle.File, change func(raw []byte) []byte) []bundle.File {
	t.Helper()
	var old, now [32]byte
	files = replace(t, files, fmt.Sprintf("data/s%03d.", surah), func(raw []byte) []byte {
		changed := change(raw)
		old, now = sha256.Sum256(raw), sha256.Sum256(changed)
		return changed
	})
	for i, f := range files {
		files[i].Name = strings.Replace(f.Name, fmt.Sprintf("%x", old[:5]), fmt.Sprintf("%x", now[:5]), 1)
	}
	in64 := func(sum [32]byte) []byte { return []byte(base64.StdEncoding.EncodeToString(sum[:])) }
	was, is := in64(old), in64(now)
	files = replace(t, files, "data/catalogue.", func(raw []byte) []byte {
		changed := bytes.Replace(raw, was, is, 1)
		was, is = in64(sha256.Sum256(raw)), in64(sha256.Sum256(changed))
		return changed
	})
	for i, f := range files {
		if f.Name == "index.html" {
			files[i].Data = bytes.Replace(f.Data, was, is, 1)
			if bytes.Equal(files[i].Data, f.Data) {
				t.Fatal("index.html does not hold the catalogue's digest")
			}
		}
	}
	return files
}

// TestDamage: text that is not the verified text is refused in plain words, and no word of it is
// shown.
func TestDamage(t *testing.T) {
	file := fmt.Sprintf("data/s%03d.", surah)
	for _, c := range []struct {
		name, says string
		change     func(t *testing.T, files []bundle.File) []bundle.File
	}{
		{"one letter", "not the verified text", func(t *testing.T, files []bundle.File) []bundle.File {
			return replace(t, files, file, func(raw []byte) []byte { return swapped(t, raw, false) })
		}},
		{"one letter and its digest", "not the verified text", func(t *testing.T, files []bundle.File) []bundle.File {
			return replace(t, files, file, func(raw []byte) []byte { return swapped(t, raw, true) })
		}},
		{"one letter in a file with the right digest", "not the verified text", func(t *testing.T, files []bundle.File) []bundle.File {
			return signed(t, files, func(raw []byte) []byte { return swapped(t, raw, false) })
		}},
		{"one digest", "not the verified text", func(t *testing.T, files []bundle.File) []bundle.File {
			return replace(t, files, file, func(raw []byte) []byte { b := bytes.Clone(raw); b[4]++; return b })
		}},
		{"another version", "another version", func(t *testing.T, files []bundle.File) []bundle.File {
			return signed(t, files, func(raw []byte) []byte { b := bytes.Clone(raw); b[3]++; return b })
		}},
		{"another surah", "not the verified text", func(t *testing.T, files []bundle.File) []bundle.File {
			var other []byte
			for _, f := range files {
				if strings.HasPrefix(f.Name, "data/s079.") {
					other = f.Data
				}
			}
			return with(t, files, file, other)
		}},
		{"cut off", "not the verified text", func(t *testing.T, files []bundle.File) []bundle.File {
			return with(t, files, file, nil, 300)
		}},
		{"one event", "not the verified text", func(t *testing.T, files []bundle.File) []bundle.File {
			return replace(t, files, file, func(raw []byte) []byte {
				b := bytes.Clone(raw)
				b[headLen+slices.Index(b[headLen:], slices.Max(b[headLen:]))]--
				return b
			})
		}},
		{"null", "not the verified text", func(t *testing.T, files []bundle.File) []bundle.File {
			return replace(t, files, file, func([]byte) []byte { return []byte("null") })
		}},
		{"the text of a rule", "not the verified text", func(t *testing.T, files []bundle.File) []bundle.File {
			return replace(t, files, "data/catalogue.", func(raw []byte) []byte { return bytes.Replace(raw, []byte(`"short":"`), []byte(`"short":"x`), 1) })
		}},
		{"a sign-in page", "sign-in page", func(t *testing.T, files []bundle.File) []bundle.File {
			return with(t, files, file, []byte("<!doctype html><title>Sign in</title>"))
		}},
		{"missing", "no signal", func(t *testing.T, files []bundle.File) []bundle.File {
			return without(t, files, file)
		}},
		{"no catalogue", "no signal", func(t *testing.T, files []bundle.File) []bundle.File {
			return without(t, files, "data/catalogue.")
		}},
		{"damaged catalogue", "not the verified text", func(t *testing.T, files []bundle.File) []bundle.File {
			return with(t, files, "data/catalogue.", nil, 300)
		}},
	} {
		t.Run(c.name, func(t *testing.T) {
			s := serve(t, "/", c.change(t, built(t)))
			p := newPage(t)
			p.open(s.address + "#/lines?rule=noon-ikhfa&from=78:12&to=78:16")
			p.wait("a word about it", `document.querySelector("[role=alert]")?.innerText.length > 20`)
			if says := p.text("[role=alert]"); !strings.Contains(says, c.says) {
				t.Errorf("the page says %q, want %q in it", says, c.says)
			}
			if n := p.count("[data-t=passage] .w"); n != 0 {
				t.Errorf("%d words are shown", n)
			}
		})
	}
}

// TestDamageHeals: what was damaged once, and lies in the browser's own cache, is fetched again
// before anybody is told.
func TestDamageHeals(t *testing.T) {
	for _, file := range []string{"data/catalogue.", fmt.Sprintf("data/s%03d.", surah), "data/passages."} {
		t.Run(file, func(t *testing.T) {
			var once sync.Once
			s := serve(t, "/", built(t), func(h http.Handler) http.Handler {
				return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
					if !strings.HasPrefix(r.URL.Path, "/"+file) {
						h.ServeHTTP(w, r)
						return
					}
					w.Header().Set("Cache-Control", "max-age=31536000, immutable")
					harmed := false
					once.Do(func() { harmed = true })
					if harmed {
						w.Write([]byte("<!doctype html><title>Sign in</title>"))
						return
					}
					h.ServeHTTP(keepsCacheControl{w}, r)
				})
			})
			p := newPage(t)
			p.unkept() // the worker would fetch it first, and heals by itself
			p.begin(s.address, "")
			p.choose(rule, surah, from, upTo)
			p.wait("the lines", visible(hook(fmt.Sprintf("verse-%d-%d", surah, upTo))))
		})
	}
}

// keepsCacheControl lets a file be kept by the browser for good.
type keepsCacheControl struct{ http.ResponseWriter }

func (w keepsCacheControl) Write(b []byte) (int, error) {
	w.Header().Set("Cache-Control", "max-age=31536000, immutable")
	return w.ResponseWriter.Write(b)
}

// with replaces the file's bytes by data, or cuts them to a length.
func with(t testing.TB, files []bundle.File, prefix string, data []byte, cut ...int) []bundle.File {
	t.Helper()
	for i, f := range files {
		if strings.HasPrefix(f.Name, prefix) {
			if len(cut) > 0 {
				data = f.Data[:cut[0]]
			}
			files[i].Data = data
			return files
		}
	}
	t.Fatalf("no file begins with %s", prefix)
	return nil
}

func without(t testing.TB, files []bundle.File, prefix string) []bundle.File {
	t.Helper()
	var left []bundle.File
	for _, f := range files {
		if !strings.HasPrefix(f.Name, prefix) {
			left = append(left, f)
		}
	}
	if len(left) != len(files)-1 {
		t.Fatalf("%d files begin with %s, want one", len(files)-len(left), prefix)
	}
	return left
}
