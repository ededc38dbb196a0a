#!/usr/bin/env node
// The entry of the headless drafter: the command on the process's own words and streams.

import { runCommand } from './command';

process.exitCode = await runCommand(process.argv.slice(2), process);
