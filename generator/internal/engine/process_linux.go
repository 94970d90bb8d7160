package engine

import (
	"os/exec"
	"syscall"
)

// alone gives a program a group of its own, so that it can be ended with all it has started, and
// lets it end with this one.
func alone(cmd *exec.Cmd) {
	cmd.SysProcAttr = &syscall.SysProcAttr{Setpgid: true, Pdeathsig: syscall.SIGKILL}
}

// grouped is alone for a program that another package starts, on a thread that may end before it.
func grouped(cmd *exec.Cmd) { cmd.SysProcAttr = &syscall.SysProcAttr{Setpgid: true} }

func kill(cmd *exec.Cmd) { syscall.Kill(-cmd.Process.Pid, syscall.SIGKILL) }
