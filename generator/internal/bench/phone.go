package bench

import "fmt"

// measure is a figure of a benchmark in Chromium; its metrics are name-ms-median and name-ms-worst,
// or, for one figure alone, those without a name.
type measure struct {
	what, bench, long, name string
	runs                    int
	most                    float64
	whole                   bool
	note                    string
}

// phones are measured at a quarter of the machine's speed.
var phones = []measure{
	{"first open: first screen", "FirstLetters", "10x", "today", 10, 0, false, "nothing kept, host on this machine, a new profile each"},
	{"first open of a link to lines: letters", "FirstLetters", "10x", "lines", 10, 0, false, "the same"},
	{"tap on Today's card to letters", "Start", "20x", "", 20, mostTap, true, ""},
	{"first tap on Today's card after opening", "FirstStart", "20x", "", 20, mostTap, true, "each opened anew"},
	{"other lines to letters", "Lines", "20x", "", 20, mostTap, true, ""},
	{"touch to coloured letter", "Mark", "20x", "", 20, mostTap, true, ""},
	{"first ranking, right after opening", "RankOpening", "10x", "", 10, mostFirst, true, "while the site is being kept; a new profile each"},
	{"first ranking, at rest", "Rank", "1x", "first", 5, mostFirst, true, "a new page each"},
	{"later rankings", "Rank", "1x", "", 100, mostRank, false, ""},
	{"opening a kept lesson, letters coloured", "Lesson", "40x", "", 40, 0, false, ""},
}

// phone measures what a hand waits for.
func phone(r *run) []Row {
	t, err := r.compile("e2e")
	if err != nil {
		return failedRow("taps in Chromium", err)
	}
	done := map[string]Result{}
	failed := map[string]error{}
	var rows []Row
	for _, m := range phones {
		if _, ok := done[m.bench]; !ok && failed[m.bench] == nil {
			r.say("  %s", m.what)
			if got, err := t.bench(m.bench, m.long); err != nil {
				failed[m.bench] = err
			} else {
				done[m.bench] = got
			}
		}
		if err := failed[m.bench]; err != nil {
			rows = append(rows, failedRow(m.what, err)...)
			continue
		}
		rows = append(rows, m.row(done[m.bench]))
	}
	return rows
}

func (m measure) row(got Result) Row {
	prefix := ""
	if m.name != "" {
		prefix = m.name + "-"
	}
	median, ok := got.Metrics[prefix+"ms-median"]
	worst, ok2 := got.Metrics[prefix+"ms-worst"]
	if !ok || !ok2 {
		return Row{What: m.what, Failed: fmt.Errorf("Benchmark%s told no %sms-median and %[2]sms-worst", m.bench, prefix)}
	}
	return Row{What: m.what, Unit: "ms", Median: median, Worst: worst, Runs: m.runs, Most: m.most, Whole: m.whole, Note: m.note}
}

// memory is what the page holds before, during and after an hour.
func memory(r *run) []Row {
	const what = "memory of an hour"
	t, err := r.compile("e2e")
	if err != nil {
		return failedRow(what, err)
	}
	got, err := t.bench("Hour", "1x")
	if err != nil {
		return failedRow(what, err)
	}
	var rows []Row
	for _, x := range []struct{ key, what, unit string }{
		{"heap-bytes", "script's heap", "bytes"},
		{"nodes", "nodes of the page", "nodes"},
		{"listeners", "listeners", "listeners"},
	} {
		for _, when := range []struct{ key, what string }{
			{"start", "at the start"},
			{"first", "after the first lines"},
			{"hour", "after an hour"},
		} {
			v, ok := got.Metrics[when.key+"-"+x.key]
			if !ok {
				return failedRow(what, fmt.Errorf("BenchmarkHour told no %s-%s", when.key, x.key))
			}
			rows = append(rows, Row{What: x.what + " " + when.what, Unit: x.unit, Median: v})
		}
	}
	m := got.Metrics
	rows[0].Note = fmt.Sprintf("an hour: four sessions, %.0f sets of lines, %.0f presses, %.0f screens, one after the other", m["sets-of-lines"], m["presses"], m["screens"])
	rows[1].Note = "parts of the script that were fetched meanwhile stay"
	return rows
}
