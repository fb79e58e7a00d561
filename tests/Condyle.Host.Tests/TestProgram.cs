namespace Condyle.Host.Tests;

/// <summary>A program over rigs of this assembly, in a folder of its own that is gone afterwards.</summary>
internal sealed class TestProgram(params Type[] types) : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("condyle-host-");

    /// <summary>The public types among which its rigs and clips are found.</summary>
    public Type[] Types { get; set; } = types;

    /// <summary>The environment that it sees.</summary>
    public Dictionary<string, string> Variables { get; } = [];

    public string Output { get; private set; } = "";

    public string Error { get; private set; } = "";

    public string[] FileNames => [.. folder.GetFiles("*", SearchOption.AllDirectories).Select(file => file.Name).Order(StringComparer.Ordinal)];

    public string Path => folder.FullName;

    public string this[string name] => System.IO.Path.Combine(folder.FullName, name);

    /// <summary>Runs the program; what it printed is then in <see cref="Output"/> and <see cref="Error"/>.</summary>
    public int Run(params string[] args) => Run(isTerminal: false, args);

    public int Run(bool isTerminal, params string[] args)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var exitCode = RigProgram.Run(args, new Surroundings("Harbour", Types, output, error, isTerminal, folder.FullName) { Variable = name => Variables.GetValueOrDefault(name) });
        (Output, Error) = (output.ToString(), error.ToString());
        return exitCode;
    }

    public string Write(string name, string text)
    {
        File.WriteAllText(this[name], text);
        return this[name];
    }

    public void Dispose() => folder.Delete(recursive: true);
}
