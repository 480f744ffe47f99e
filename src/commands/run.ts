import { workOut } from "../build.ts"
import { trades } from "../trades/index.ts"
import { addCommand } from "./add.ts"
import { buildOptions, exitStatus, WrongUsage } from "./arguments.ts"
import { benchCommand } from "./bench/bench.ts"
import { buildCommand } from "./build.ts"
import { checkCommand } from "./check.ts"
import { devCommand } from "./dev.ts"
import { faultWords, rootCause } from "./fault-words.ts"
import { issueCommand } from "./issue.ts"
import { mergeCommand } from "./merge.ts"
import { newCommand } from "./new.ts"
import { reopenCommand } from "./reopen.ts"
import { standardTerminal, type Terminal } from "./terminal.ts"
import { writeSchemas } from "./write-schemas.ts"

type Command = (args: readonly string[], terminal: Terminal) => Promise<number>

const commands: Record<string, Command> = {
  build: (args, terminal) => buildCommand(buildOptions(args), { terminal, env: process.env }),
  check: (args, terminal) =>
    checkCommand(args, {
      ...terminal,
      trades,
      examine: async (job) => (await workOut(job, trades)).findings,
    }),
  dev: (args, terminal) => devCommand(args, terminal),
  new: (args, terminal) => newCommand(args, { ...terminal, today: new Date().toISOString().slice(0, 10) }),
  issue: (args, terminal) => issueCommand(args, { terminal, today: new Date().toISOString().slice(0, 10) }),
  reopen: reopenCommand,
  add: (args, terminal) => addCommand(args, terminal),
  merge: mergeCommand,
  schemas: async () => {
    writeSchemas("jobs", trades)
    return exitStatus.done
  },
  bench: (args, terminal) => benchCommand(args, terminal),
}

/** The entry of every command: `tsx src/commands/run.ts <command> ...`. Sets the exit status; shows a stack trace only with `--debug`. */
async function run(argv: readonly string[]): Promise<number> {
  const terminal = standardTerminal()
  const [name = "", ...args] = argv
  const command = commands[name]
  if (!command) {
    terminal.err(`unknown command "${name}"; there are: ${Object.keys(commands).join(", ")}`)
    return exitStatus.wrongUsage
  }
  try {
    return await command(args, terminal)
  } catch (error) {
    if (error instanceof WrongUsage) {
      terminal.err(error.message)
      return error.exitStatus
    }
    terminal.err(ourFault(error, args.includes("--debug")))
    return exitStatus.ourFault
  }
}

/** What went wrong, in plain words; with its trace where asked. */
function ourFault(error: unknown, debug: boolean): string {
  const words = faultWords(error)
  return debug ? `${words}\n${rootCause(error)?.stack ?? ""}` : `${words}\nAdd --debug to see where.`
}

process.exitCode = await run(process.argv.slice(2))
