namespace Condyle.Analyzers.Tests.Reading.Framework;

/// <summary>Reads and runs code that calls the framework, with what shows the results: as text, whatever the culture, and which exception came.</summary>
internal static class FrameworkOracle
{
    private const string Usings = "using System.Collections.Frozen; using System.Collections.Immutable; using System.Globalization; using System.Text;\n";

    private const string Members = """
        private static string Try(Func<object?> run)
        {
            try { return $"{run()}"; }
            catch (ArgumentNullException) { return "null"; }
            catch (ArgumentOutOfRangeException) { return "range"; }
            catch (ArgumentException) { return "argument"; }
            catch (KeyNotFoundException) { return "key"; }
            catch (FormatException) { return "format"; }
            catch (OverflowException) { return "overflow"; }
            catch (DivideByZeroException) { return "zero"; }
            catch (ArithmeticException) { return "arithmetic"; }
            catch (InvalidOperationException) { return "operation"; }
            catch (NotSupportedException) { return "unsupported"; }
            catch (IndexOutOfRangeException) { return "index"; }
            catch (InvalidCastException) { return "cast"; }
            catch (NullReferenceException) { return "reference"; }
        }

        private static string Text(FormattableString text) => FormattableString.Invariant(text);
        private static string All<T>(IEnumerable<T> items) => string.Join(",", items.Select(item => item is null ? "null" : item is IFormattable number ? number.ToString(null, System.Globalization.CultureInfo.InvariantCulture) : item.ToString()));
        """;

    public static void Agrees(string body, string members = "") => Oracle.AgreesOn(("rig.cs", Usings + Oracle.Rig(body, Members + "\n" + members)));
}
