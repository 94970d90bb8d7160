//go:build !linux

package engine

import "os/exec"

func alone(*exec.Cmd) {}

func grouped(*exec.Cmd) {}

func kill(cmd *exec.Cmd) { cmd.Process.Kill() }
