using System.CommandLine;
using System.CommandLine.Invocation;
using System.CommandLine.Parsing;
using System.Reflection;
using Condyle.Host.Catalogue;
using Condyle.Host.Commands;
using Condyle.Runtime;

namespace Condyle.Host;

/// <summary>
/// Makes a rig project a program. Its Program.cs is one line: <c>return RigProgram.Run(args);</c>.
/// Without a verb it does the main job: it checks and evaluates every rig of the project, bakes its clips into the delivered file and reports.
/// </summary>
public static class RigProgram
{
    /// <summary>Runs the program over the public rig definitions and clips of the entry assembly.</summary>
    /// <param name="args">The command line; <c>--help</c> lists the verbs.</param>
    /// <returns>The exit code: 0 when all is well, 1 for findings that are errors or work that failed, 2 for input that can't be used.</returns>
    public static int Run(string[] args) => Run(args, Surroundings.OfProcess(
        Assembly.GetEntryAssembly() ?? throw new InvalidOperationException("There is no entry assembly: call this from a program's Main.")));

    internal static int Run(string[] args, Surroundings surroundings)
    {
        ArgumentNullException.ThrowIfNull(args);
        var parsed = CommandTree.Build(surroundings).Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (parsed.Action is ParseErrorAction)
            return Say(string.Join(' ', parsed.Errors.Select(error => error.Message).Distinct()) + Nearest.ToUnknownWordOf(parsed) + " Run it with --help to see what it takes.", ExitCode.BadInput);
        if (BeforeVerb(parsed) is { } early)
            return Say($"{early} stands before '{parsed.CommandResult.Command.Name}', which wouldn't see it. Write it after.", ExitCode.BadInput);
        if (GivenNothing(parsed) is { } nothing)
            return Say($"{nothing} is given nothing. Run it with --help to see what it takes.", ExitCode.BadInput);
        try
        {
            return parsed.InvokeAsync(new InvocationConfiguration { Output = surroundings.Output, Error = surroundings.Error, EnableDefaultExceptionHandler = false }).GetAwaiter().GetResult();
        }
        catch (BadInputException problem)
        {
            return Say(problem.Message, ExitCode.BadInput);
        }
        catch (RigFailure failure)
        {
            return Say(failure.Message, ExitCode.Failed);
        }
        catch (OperationCanceledException)
        {
            return Say("Stopped. No file was half-written, and what is finished stays: a batch that is started again goes on from there.", ExitCode.Failed);
        }

        int Say(string message, int exitCode)
        {
            surroundings.TellError(message);
            return exitCode;
        }
    }

    /// <summary>An option or an argument whose value is an empty text, as a script's variable leaves it that isn't set.</summary>
    private static string? GivenNothing(ParseResult parsed) => parsed.CommandResult.Children
        .Where(given => given.Tokens.Any(token => token.Value.Length == 0))
        .Select(given => given is OptionResult option ? option.Option.Name : given is ArgumentResult argument ? $"<{argument.Argument.Name}>" : null).FirstOrDefault();

    /// <summary>An option that stands before a verb: the program takes it when there is no verb, and a verb has its own.</summary>
    private static string? BeforeVerb(ParseResult parsed) => parsed.CommandResult == parsed.RootCommandResult ? null : parsed.RootCommandResult.Children
        .OfType<OptionResult>().FirstOrDefault(option => !option.Implicit && !option.Option.Recursive)?.Option.Name;
}
