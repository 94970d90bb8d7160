package engine

import (
	"bufio"
	"fmt"
	"os"
	"os/exec"
	"strings"
	"time"
)

// display starts an X server without a screen and gives its name, such as ":1". It is large enough
// for one window, of Width by Height or turned or as wide as a laptop's. It does not begin anew when
// its last window closes, because the next might then find it closed.
func display(xvfb string) (*process, string, error) {
	r, w, err := os.Pipe()
	if err != nil {
		return nil, "", err
	}
	defer w.Close()
	cmd := exec.Command(xvfb, "-displayfd", "3", "-screen", "0", fmt.Sprintf("%dx%[1]dx24", 2*Height*Scale), "-nolisten", "tcp", "-noreset")
	cmd.ExtraFiles = []*os.File{w}
	p, err := launch(cmd, nil)
	if err != nil {
		r.Close()
		return nil, "", err
	}
	got := make(chan string, 1)
	go func() {
		// The number and the end of its line come apart; the server stops if nobody reads both.
		defer r.Close()
		line, _ := bufio.NewReader(r).ReadString('\n')
		got <- strings.TrimSpace(line)
	}()
	select {
	case n := <-got:
		if n != "" {
			return p, ":" + n, nil
		}
	case <-p.done:
	case <-time.After(startTime):
	}
	p.end()
	return nil, "", fmt.Errorf("Xvfb: %s", p.last())
}

// startTime is how long a program may take to start on a busy machine.
const startTime = 60 * time.Second
