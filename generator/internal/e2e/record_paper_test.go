package e2e

import (
	"encoding/csv"
	"fmt"
	"slices"
	"strings"
	"testing"

	cdppage "github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
)

// TestTableSaved catches the table for spreadsheets on its way and reads it with Go's own reader of
// RFC 4180: a row for each session, no formula, no name of a child, in the file or in its name.
func TestTableSaved(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.record(s, "")
	p.sessions("the record", 3)
	inDatabase[any](p, `
		const tx = db.transaction(["sessions", "months"], "readwrite"), to = tx.objectStore("sessions");
		to.put({ ...await ask(to.get("paper")), note: '=HYPERLINK("http://x","a, b")\n2' });
		tx.objectStore("months").clear();
		await new Promise((ok, no) => { tx.oncomplete = ok; tx.onabort = no; });
		return 0;`)
	p.reload()
	p.sessions("the record", 3)
	eval[any](p, `(URL.createObjectURL = b => { globalThis.file = b.arrayBuffer().then(x => [...new Uint8Array(x).slice(0, 3)].join() + "|" + b.type + "|" + new TextDecoder().decode(x)); return ""; },
		HTMLAnchorElement.prototype.click = function () { globalThis.fileName = this.download; }, 0)`)
	p.click("save-table")
	p.wait("that it is saved", `globalThis.file && `+visible(hook("notice-table")))
	parts := strings.SplitN(eval[string](p, `globalThis.file`), "|", 3)
	if parts[0] != "239,187,191" || !strings.HasPrefix(parts[1], "text/csv") {
		t.Errorf("the file begins with %s and is of type %s", parts[0], parts[1])
	}
	name := eval[string](p, `globalThis.fileName`)
	if !strings.HasPrefix(name, "sutur-sessions-20") || !strings.HasSuffix(name, ".csv") || strings.Contains(name+parts[2], "Nur") {
		t.Errorf("the file is called %q", name)
	}
	if n := strings.Count(parts[2], "\r\n"); n != 4 {
		t.Errorf("%d lines end as RFC 4180 has it", n)
	}
	rows, err := csv.NewReader(strings.NewReader(parts[2])).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	want := [][]string{
		{"Day", "Surah", "Verses", "Rules", "Found", "Of", "Found before looking again", "How it went", "Answer shown", "On paper", "Read together", "Minutes", "Note"},
		{"", "An-Naba", "12–16", "Hidden noon and Qalqalah", "3", "4", "2", "Read alone", "", "", "", "12", "Calm today.\n<b>Loud</b> \u202eat the end."},
		{"", "An-Naba", "12–16", "Ghunnah", "", "", "", "Read alone", "", "yes", "", "", "'=HYPERLINK(\"http://x\",\"a, b\")\n2"},
		{"", "An-Naba", "12–16", "", "", "", "", "With some help", "", "", "", "", ""},
	}
	for i, row := range rows {
		if i > 0 {
			row[0] = ""
		}
		if !slices.Equal(row, want[i]) {
			t.Errorf("row %d is\n%q, want\n%q", i, row, want[i])
		}
	}
	p.calm()
	p.stayedAt(s.address)
}

// chart reads what a chart draws and what its table says, which must be the same: bars and figures
// by the place along the axis, rows in order.
const chart = `(name => {
	const box = document.querySelector(name), step = 288 / 12;
	const at = e => Math.round(Number(e.getAttribute("x")) / step);
	const bars = {}, figures = {};
	for (const e of box.querySelectorAll("rect.full")) if (Number(e.getAttribute("height"))) bars[at(e)] = Number(e.getAttribute("height"));
	for (const e of box.querySelectorAll("text:not(.week)")) figures[at(e)] = e.textContent;
	return { bars: JSON.stringify(bars), figures: JSON.stringify(figures), rows: [...box.querySelectorAll("tr")].map(r => [...r.cells].map(c => c.innerText.trim()).join("|")) };
})`

type drawnChart struct {
	Bars, Figures string
	Rows          []string
}

// TestCharts: the charts draw what their tables say; the tables are there to be read out, and take
// no room; nothing makes the page wider than the narrowest phone.
func TestCharts(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.begin(s.address, "")
	p.open(s.address + "about.html")
	inDatabase[any](p, strings.Split(putRecord, `put("marked"`)[0]+`
		const monday = (new Date().getDay() + 6) % 7;
		put("a", monday, { rule: "ghunnah", found: 3, missed: 1 });
		put("b", monday + 7, { rule: "ghunnah", found: 1, missed: 1 });
		put("c", monday + 7, { rule: "qalqalah", found: 4, missed: 0 });
		put("d", monday + 70, { rule: "ghunnah", paper: true });
		put("e", monday + 84, { rule: "ghunnah", found: 9, missed: 0 });
		await new Promise((ok, no) => { tx.oncomplete = ok; tx.onabort = no; });
		return 0;`)
	p.open(s.address + "#/record")
	p.wait("the charts", visible(hook("charts-found")))
	often := eval[drawnChart](p, chart+`("[data-t=charts-sessions]")`)
	if often.Bars != `{"1":30,"10":60,"11":30}` || often.Figures != `{"1":"1","10":"2","11":"1"}` {
		t.Errorf("sessions a week are drawn as %s %s", often.Bars, often.Figures)
	}
	found := eval[drawnChart](p, chart+`("[data-t=charts-found]")`)
	if found.Bars != `{"10":49.8,"11":45}` || found.Figures != `{"10":"83","11":"75"}` {
		t.Errorf("places found are drawn as %s %s", found.Bars, found.Figures)
	}
	for i, want := range map[int][2]string{1: {"|0", "|||not counted"}, 2: {"|1", "|||not counted"}, 11: {"|2", "|5|6|83%"}, 12: {"|1", "|3|4|75%"}} {
		if len(often.Rows) != 13 || len(found.Rows) != 13 || !strings.HasSuffix(often.Rows[i], want[0]) || !strings.HasSuffix(found.Rows[i], want[1]) {
			t.Fatalf("the tables say %q and %q", often.Rows, found.Rows)
		}
	}
	if text := p.text(hook("total-ghunnah")); !strings.Contains(text, "found 13 of 15") || !strings.Contains(text, "4 sessions") {
		t.Errorf("the total of ghunnah is %q", text)
	}
	if share := eval[string](p, `document.querySelector('[data-t="total-ghunnah"] rect.full').getAttribute("width")`); share != "86" {
		t.Errorf("its bar is %s of 100", share)
	}
	for _, at := range []string{"#/record", "#/record?session=a", "#/record?session=a&edit=1", "#/record?add=1"} {
		eval[any](p, fmt.Sprintf(`(location.hash = %q, 0)`, at))
		p.wait(at, fmt.Sprintf(`location.hash === %q && document.querySelector("main h1") && !document.querySelector("main [aria-busy=true]")`, at))
		if over := p.sideways(320 * 25.4 / 96); len(over) > 0 && at != "#/record" {
			t.Errorf("%s runs out of 320 pixels: %q", at, over)
		}
		for _, wide := range []int64{320, 390, 1280} {
			p.do(chromedp.EmulateViewport(wide, 800))
			if by := eval[int](p, `document.documentElement.scrollWidth - innerWidth`); by > 0 {
				t.Errorf("%s is %d pixels too wide at %d", at, by, wide)
			}
		}
	}
	p.calm()
}

// TestRecordPrinted: on paper the record is a page to read, with the figures of its charts and no
// controls, within the margins, with as many sessions as are said.
func TestRecordPrinted(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.begin(s.address, "Nur")
	p.putSessions(s, 600)
	p.open(s.address + "#/record")
	p.sessions("the record", 50)
	if p.count(hook("print-empty")+`[href="#/print?sheet=record"]`) != 1 {
		t.Error("no way to the empty sheet")
	}
	p.clickOn(hook("by-rule") + " summary") // folded, it is unfolded for the print
	eval[any](p, `(window.print = () => { globalThis.printed = document.querySelectorAll("[data-t=session]").length; }, 0)`)
	p.click("print-record")
	p.wait("the print", `globalThis.printed === 500`)
	p.media("print")
	text := p.text("main")
	for _, want := range []string{"What \u2068Nur\u2069 has read", "Printed on", "Week from", "Percent", "found ", "An-Naba 1–5", "The newest 500 of 600 sessions"} {
		if !strings.Contains(text, want) {
			t.Errorf("the page lacks %q", want)
		}
	}
	for _, odd := range []string{"Remove", "Open", "Add a session", "Backup", "Show", "Save as a table"} {
		if strings.Contains(text, odd) {
			t.Errorf("the page has %q", odd)
		}
	}
	p.media("")
	doc, err := readPDF(call(p, cdppage.PrintToPDF, cdppage.PrintToPDFParams{PaperWidth: 8.27, PaperHeight: 11.69}).Data)
	if err != nil {
		t.Fatal(err)
	}
	if n := len(doc.Pages); n < 15 || n > 60 {
		t.Errorf("%d pages for 500 sessions", n)
	}
	for i, page := range doc.Pages {
		if len(page.Glyphs) < 40 {
			t.Errorf("page %d has %d glyphs", i+1, len(page.Glyphs))
		}
		for _, g := range page.Glyphs {
			if margin := 16 * 72 / 25.4; g.X < margin-2 || g.X > page.Width-margin || g.Y < margin-2 || g.Y > page.Height-margin {
				t.Errorf("page %d has a glyph at %.0f, %.0f of %.0f by %.0f", i+1, g.X, g.Y, page.Width, page.Height)
				break
			}
		}
	}
	eval[any](p, `(dispatchEvent(new Event("afterprint")), 0)`)
	p.sessions("the list as before", 50)
	if over := p.sideways(178); len(over) > 0 {
		t.Errorf("the record runs out of its page: %q", over)
	}
	// Today leads to a sheet of its lines.
	p.click("nav-today")
	p.click("print-today")
	p.wait("the sheet", visible("main.print .leaf"))
	p.calm()
}
