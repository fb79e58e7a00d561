namespace Condyle.Analyzers.Tests.Generated;

/// <summary>What every program has: a record of what happened in which order, and fuel, so that each of them ends.</summary>
internal static class Prelude
{
    public const string Source =
        """
        internal static class Trace
        {
            public static readonly List<string> Lines = [];
            private static int fuel = 300;

            public static bool Goes() => fuel-- > 0;

            public static void Note(string text)
            {
                if (Lines.Count < 150)
                    Lines.Add(text);
            }

            public static T Seen<T>(T value, string tag)
            {
                Note(tag);
                return value;
            }

            public static T Same<T>(T value) => value;

            public static ref T At<T>(T[] items, int at) => ref items[at];

            public static string Which(int value) => $"int {value}";

            public static string Which(long value) => $"long {value}";

            public static string Which(double value) => "double " + Milli(value);

            public static string Which(string? value) => $"text {value}";

            public static string Which(object? value) => "object " + Kind(value);

            public static string Which<T>(IEnumerable<T> items) => $"{items.Count()} items";

            public static string Short(string text) => text.Length <= 24 ? text : text[..24];

            public static string Milli(double value) => value is > -1000000 and < 1000000 ? ((long)(value * 1024)).ToString() : value > 0 ? "big" : value < 0 ? "small" : "none";

            public static string Kind(object? value) => value switch
            {
                null => "null",
                int number => $"int {number}",
                string { Length: > 3 } text => $"long text {text}",
                string text => $"text {text}",
                bool truth => $"bool {truth}",
                char letter => $"char {letter}",
                long or byte or short => "whole",
                double real => $"double {Milli(real)}",
                _ => "other",
            };
        }

        """;
}
