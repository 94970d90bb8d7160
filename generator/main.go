// Command generator builds, serves, explains and checks the site Sutur.
package main

import (
	"os"

	"sutur/generator/internal/cli"
)

func main() { os.Exit(run()) }

func run() int { return cli.Run(os.Args[1:], os.Stdout, os.Stderr) }
