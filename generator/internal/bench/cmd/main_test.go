package main

import (
	"strings"
	"testing"
)

func TestBadStage(t *testing.T) {
	var out, said strings.Builder
	if code := run([]string{"engine", "motor"}, &out, &said); code != 2 || out.Len() > 0 {
		t.Errorf("exit %d, printed %q", code, out.String())
	}
	if got := said.String(); got != "\"motor\" is not a stage; accepted are build, engine, index, bytes, phone, memory\n" {
		t.Errorf("said %q", got)
	}
}
