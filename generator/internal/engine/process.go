package engine

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"os/exec"
	"runtime"
	"strings"
	"sync"
	"time"
)

// process is a program that ends with this one.
type process struct {
	cmd  *exec.Cmd
	done chan struct{} // closed when it has ended

	mu   sync.Mutex
	said []string // its last lines
}

// launch starts a program. Its output, both kinds, goes to line, one line a call.
func launch(cmd *exec.Cmd, line func(string)) (*process, error) {
	r, w := io.Pipe()
	cmd.Stdout, cmd.Stderr = w, w
	alone(cmd)
	p := &process{cmd: cmd, done: make(chan struct{})}
	started := make(chan error, 1)
	go func() {
		// The system ends the program when the thread that started it ends, so the thread is kept.
		runtime.LockOSThread()
		err := cmd.Start()
		started <- err
		if err == nil {
			cmd.Wait()
		}
		w.Close()
		close(p.done)
	}()
	go func() {
		in := bufio.NewScanner(r)
		in.Buffer(nil, 1<<20)
		for in.Scan() {
			p.mu.Lock()
			if p.said = append(p.said, in.Text()); len(p.said) > 20 {
				p.said = p.said[1:]
			}
			p.mu.Unlock()
			if line != nil {
				line(in.Text())
			}
		}
		io.Copy(io.Discard, r)
	}()
	if err := <-started; err != nil {
		return nil, err
	}
	return p, nil
}

// last is what the program said last, for an error.
func (p *process) last() string {
	p.mu.Lock()
	defer p.mu.Unlock()
	return strings.Join(p.said, "\n")
}

// end stops the program and what it has started.
func (p *process) end() {
	kill(p.cmd)
	select {
	case <-p.done:
	case <-time.After(10 * time.Second):
	}
}

// tries starts something that takes a port or a display, which another program may take first.
func tries[T any](name string, start func() (T, error)) (T, error) {
	var all []error
	for range 3 {
		v, err := start()
		if err == nil {
			return v, nil
		}
		all = append(all, err)
	}
	var none T
	return none, fmt.Errorf("%s does not start, tried three times: %w", name, errors.Join(all...))
}
