using System.Globalization;

namespace Condyle.Benchmarks.Projects;

/// <summary>The file of a generated project that builds all its rigs: so any code may be asked whether it runs before a rig is built.</summary>
internal static class Roll
{
    public static (string Path, string Source) File(int rigs) => ("/harbour/Roll.cs", Template.Replace(
        "/* rigs */", string.Concat(Enumerable.Range(0, rigs).Select(number => string.Create(CultureInfo.InvariantCulture, $"new Worker{number:0000}(), "))), StringComparison.Ordinal));

    private const string Template =
        """
        using System.Collections.Generic;
        using Condyle;
        using Harbour.Workers;

        namespace Harbour;

        /// <summary>Builds all rigs.</summary>
        public static class Roll
        {
            public static void Call()
            {
                foreach (var definition in All())
                    Rig.Build(definition);
            }

            private static IReadOnlyList<IRigDefinition> All() => [/* rigs */];
        }
        """;
}
