package lesson

import (
	"strings"
	"testing"
)

// Whatever the bytes, front matter keeps to its promises: values are where their offsets say, no
// key comes twice, and the text begins after a fence.
func FuzzFrontMatter(f *testing.F) {
	for _, s := range []string{
		"", "---", "---\n---", "---\nid: a\n---\ntext", "---\r\nid: a\r\nrules: a, b,,c\r\n---\r\ntext", "---\nid: a\nid: b\n---\n",
		"---\nid:\n---\n", "---\nid: a: b\n", "---\n:\n---\n", "---\nname: \u00a0x\u00a0\n---\n", "--- \nid: a\n---\n", "---\n\xff: a\n---\n",
	} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		fields, body, problems := frontMatter(s)
		if body < 0 || body > len(s) {
			t.Fatalf("body at %d of %d", body, len(s))
		}
		seen := map[string]bool{}
		for _, fl := range fields {
			if seen[fl.key] || fl.value == "" {
				t.Fatalf("%q twice or empty", fl.key)
			}
			seen[fl.key] = true
			for _, i := range append(fl.items(), fl) {
				if i.off+len(i.value) > len(s) || s[i.off:i.off+len(i.value)] != i.value {
					t.Fatalf("%q is not at %d", i.value, i.off)
				}
			}
		}
		for _, p := range problems {
			if p.off < 0 || p.off > len(s) || p.found == "" || p.do == "" {
				t.Fatalf("%+v", p)
			}
		}
		if len(problems) == 0 && !strings.HasSuffix(strings.TrimRight(s[:body], "\r\n"), fence) {
			t.Fatalf("no fence before the text in %q", s[:body])
		}
	})
}

// A line of a verse block or a place in brackets is read or refused with an offset inside it, and
// what is read says the same again when written out.
func FuzzVerseLine(f *testing.F) {
	for _, s := range []string{
		"78:14 word 1 rule noon-ikhfa", "78:14 words 1-3 join rule noon-ikhfa | a note", "1:1 rule madd-tabii|", "78:14", "word", "1:1 word",
		"1:1 word 0 rule a", "1:1 words 3-2 rule a", "78:14.1", "78:14.1-2 not ghunnah", "78:14. rule a", "| note", "1:1 rule a b", "999:999 rule é",
	} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		for name, parse := range map[string]func(string) (place, *problem){"line": parseLine, "inline": parseInline} {
			p, bad := parse(s)
			if bad != nil {
				if bad.off < 0 || bad.off > len(s) || bad.found == "" || bad.do == "" {
					t.Fatalf("%s: %+v", name, bad)
				}
				continue
			}
			if p.first < 0 || p.last < p.first || p.note > len(s) {
				t.Fatalf("%s: %+v", name, p)
			}
			if p.rule != "" && !strings.HasPrefix(s[p.ruleOff:], p.rule) {
				t.Fatalf("%s: the rule is not at %d", name, p.ruleOff)
			}
			if again, bad := parseLine(p.String() + " rule a"); bad != nil || again.String() != p.String() {
				t.Fatalf("%s: %s is read as %s: %+v", name, p, again, bad)
			}
		}
	})
}
