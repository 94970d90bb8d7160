package e2e

import (
	"fmt"
	"net/http"
	"os"
	"strings"
	"testing"
)

// TestNamesStayApart gives a learner a name that turns the direction of what comes after it: the
// sentences around it are not turned.
func TestNamesStayApart(t *testing.T) {
	s := serve(t, "/", built(t))
	for name, given := range map[string]string{"an override": "\u202ename", "an open isolate": "\u2067name", "an end of isolates": "\u2069\u202ename", "Arabic": "\u0645\u0631\u064a\u0645 3"} {
		t.Run(name, func(t *testing.T) {
			p := newPage(t)
			p.begin(s.address, "x")
			p.open(s.address + "#/learner")
			p.wait("the name", visible(hook("nickname")))
			p.set("nickname", given)
			p.click("nav-record")
			p.wait("the heading", `document.querySelector("main.record h1")?.textContent.includes("has read") && !/\bx\b/.test(document.querySelector("main.record h1").textContent)`)
			// Letters of the sentence stand in the order in which they are written.
			got := eval[string](p, `(() => {
				const node = document.querySelector("main.record h1").firstChild, r = new Range(), seen = [];
				for (const m of node.data.matchAll(/What|has read/g)) for (let i = m.index; i < m.index + m[0].length; i++) {
					r.setStart(node, i);
					r.setEnd(node, i + 1);
					const b = r.getBoundingClientRect();
					seen.push([b.top, b.left, node.data[i]]);
				}
				return seen.every(([y, x], i) => !i || y > seen[i - 1][0] || x >= seen[i - 1][1]) ? "" : JSON.stringify(seen);
			})()`)
			if got != "" {
				t.Errorf("the heading is turned round: %s", got)
			}
		})
	}
}

// TestTrustedTypes: on a host that lets only trusted addresses be run as scripts, the site is kept
// all the same.
func TestTrustedTypes(t *testing.T) {
	s := serve(t, "/", built(t), func(h http.Handler) http.Handler {
		return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
			w.Header().Set("Content-Security-Policy", "require-trusted-types-for 'script'; trusted-types sutur lit-html")
			h.ServeHTTP(w, r)
		})
	})
	p := newPage(t)
	p.open(s.address)
	p.wait("everything to be kept", kept)
	p.begin(s.address, "")
	p.calm()
}

// TestHostileBackups refuses files with what cannot be, and takes nothing of them.
func TestHostileBackups(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.begin(s.address, "")
	p.open(s.address + "#/record")
	const at = "2026-03-01T10:00:00.000Z"
	session := func(from, to, day, more string) string {
		return fmt.Sprintf(`{"format":"sutur-backup","v":3,"saved":%[1]q,"learners":[{"id":"a","name":"A","place":{"s":78,"a":1},"settled":true,"made":%[1]q,"updated":%[1]q}],
			"taught":[],"sessions":[{"id":"s","learner":"a","day":%[2]q,"at":%[1]q,"rule":"","from":%[3]s,"to":%[4]s,"marks":[],"stops":[],"found":0,"missed":0,"extra":0,"helped":false,"outcome":"alone"%[5]s}]}`,
			at, day, from, to, more)
	}
	for _, c := range []struct{ name, data string }{
		{"no such verse", session(`{"s":108,"a":286}`, `{"s":108,"a":286}`, "2026-03-01", "")},
		{"30 February", session(`{"s":108,"a":1}`, `{"s":108,"a":3}`, "2026-02-30", "")},
		{"from after to", session(`{"s":108,"a":3}`, `{"s":108,"a":1}`, "2026-03-01", "")},
		{"an unknown field of megabytes", session(`{"s":108,"a":1}`, `{"s":108,"a":3}`, "2026-03-01", `,"more":"`+strings.Repeat("x", 3<<20)+`"`)},
		{"an unknown field of a verse", session(`{"s":108,"a":1,"x":1}`, `{"s":108,"a":3}`, "2026-03-01", "")},
	} {
		file := t.TempDir() + "/" + strings.ReplaceAll(c.name, " ", "-") + ".json"
		putFile(t, file, c.data)
		p.give("restore", file)
		p.wait(c.name+" to be refused", fmt.Sprintf(`document.querySelector('[data-t="notice-refused"]')?.innerText.replace(/[\u2068\u2069]/g, "").includes(%q + ".json is damaged")`, strings.ReplaceAll(c.name, " ", "-")))
	}
	if got := inDatabase[string](p, `return JSON.stringify([(await all("learners")).length, (await all("sessions")).length])`); got != "[1,0]" {
		t.Errorf("learners and sessions: %s", got)
	}
	good := t.TempDir() + "/good.json"
	putFile(t, good, session(`{"s":108,"a":1}`, `{"s":108,"a":3}`, "2026-02-28", ""))
	p.restore(good)
	p.wait("a whole one to be taken", visible(hook("notice-restored")))
	p.calm()
}

func putFile(t testing.TB, name, data string) {
	t.Helper()
	if err := os.WriteFile(name, []byte(data), 0o644); err != nil {
		t.Fatal(err)
	}
}
