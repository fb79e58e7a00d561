using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text.Json;
using Condyle.Benchmarks.Measuring;

namespace Condyle.Benchmarks.Runtime;

/// <summary>
/// What three.js takes for no more than the yardstick's hierarchies: translations and rotations set, world matrices worked out. It doesn't blend, follow or solve.
/// Told where Node.js and the packages of tests/outside are there.
/// </summary>
internal static class OutsideHierarchy
{
    public static IEnumerable<Result> Measure()
    {
        var folder = Path.Combine(Path.GetDirectoryName(Here())!, "..", "..", "outside");
        if (!Directory.Exists(Path.Combine(folder, "node_modules", "three")) || Ask(folder, Question()) is not { } answer)
        {
            Console.Error.WriteLine("| three.js: left out, since Node.js or the packages of tests/outside aren't there | | | | |");
            yield break;
        }

        yield return new("three.js: ns for the world matrices of the yardstick's hierarchies", double.Parse(answer, CultureInfo.InvariantCulture), Goal: null, "no blends, drives and solvers");
    }

    /// <summary>The parent of each node: the controls and their placements, then the joints, and the solved limbs beside them.</summary>
    private static string Question()
    {
        var parents = new List<int>();
        for (var control = 0; control < Yardstick.Controls; control++)
        {
            parents.Add(Yardstick.Above(control) is >= 0 and var above ? (above * 2) + 1 : -1);
            parents.Add(control * 2);
        }

        var first = parents.Count;
        for (var joint = 0; joint < Yardstick.Blends + Yardstick.Followers; joint++)
            parents.Add(Yardstick.JointAbove(joint) is >= 0 and var above ? first + above : -1);
        for (var limb = 0; limb < Yardstick.Limbs; limb++)
        {
            parents.Add((Yardstick.LimbRoot(limb) * 2) + 1);
            parents.Add(parents.Count - 1);
            parents.Add(parents.Count - 1);
        }

        return JsonSerializer.Serialize(parents);
    }

    private static string? Ask(string folder, string question)
    {
        try
        {
            using var node = Process.Start(new ProcessStartInfo("node", "hierarchy.mjs") { WorkingDirectory = folder, RedirectStandardInput = true, RedirectStandardOutput = true })!;
            node.StandardInput.Write(question);
            node.StandardInput.Close();
            var answer = node.StandardOutput.ReadToEnd();
            node.WaitForExit();
            return node.ExitCode == 0 ? answer : null;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return null; // no Node.js
        }
    }

    private static string Here([CallerFilePath] string path = "") => path;
}
