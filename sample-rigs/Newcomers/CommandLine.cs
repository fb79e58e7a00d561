using Condyle;
using Condyle.Host;
using Condyle.Runtime;

namespace Newcomers;

/// <summary>The program: a file's name rigs the file as it is; a verb goes to the rigs that were written here.</summary>
internal static class CommandLine
{
    private const int Ok = 0, Failed = 1, BadInput = 2;

    private const string Usage = """
        Rigs a skinned glTF file that nobody here made, bakes the range of motion beside its own clips and proves it.

          FILE [OUT]                    FILE is a .gltf or .glb; OUT is the file to write, FILE-rigged.glb where it isn't given

        Or works on the rigs that were written in this project:

          skeleton FILE [--out FILE]    writes the small .gltf from which a skeleton class is generated
          check, bake, explain          add --help to see what they take
        """;

    private static readonly string[] Verbs = ["skeleton", "check", "bake", "explain"];

    public static int Run(string[] args, TextWriter output, TextWriter error)
    {
        if (args is [] or ["--help" or "-h" or "-?"])
        {
            output.WriteLine(Usage);
            return args is [] ? BadInput : Ok;
        }

        if (Verbs.Contains(args[0]))
            return RigProgram.Run(args);
        if (args.Length > 2 || args[0].StartsWith('-'))
            return Say(error, $"'{string.Join(' ', args)}' isn't understood: give FILE and, if you like, OUT. Run it with --help to see more.", BadInput);
        try
        {
            return Rigging.Run(args[0], args.ElementAtOrDefault(1), output) ? Ok : Failed;
        }
        catch (BadInputException problem)
        {
            return Say(error, problem.Message, BadInput);
        }
        catch (Exception problem) when (problem is RigException or RigCompileException)
        {
            return Say(error, problem.Message, Failed);
        }
    }

    private static int Say(TextWriter error, string message, int exitCode)
    {
        error.WriteLine($"error: {message}");
        return exitCode;
    }
}
