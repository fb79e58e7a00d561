namespace Condyle.Host.Tests.Trust;

/// <summary>The hoist's rig as a program of its own, so that a test can kill it.</summary>
internal static class Program
{
    public static int Main(string[] args) => RigProgram.Run(args, new Surroundings("Harbour", [typeof(Hoist)], Console.Out, Console.Error, IsTerminal: false, Environment.CurrentDirectory));
}
