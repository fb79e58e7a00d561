using System.Diagnostics;
using System.Reflection;
using Condyle.Model;

namespace Condyle.Host.Catalogue;

/// <summary>What the project's own code throws, as one line with the place instead of a stack trace.</summary>
internal static class ProjectFault
{
    /// <summary>The line, and what was thrown before the runtime wrapped it.</summary>
    public static (string Line, Exception Cause) Of(Exception problem, Assembly code)
    {
        var cause = problem;
        while (cause is TargetInvocationException or TypeInitializationException && cause.InnerException is { } inner)
            cause = inner;
        var kind = cause is ArgumentException or InvalidOperationException or Runtime.BadInputException ? "" : $"{cause.GetType().Name}: ";
        return ($"{kind}{Messages.OnOneLine(Messages.OfRefusal(cause.Message).ReplaceLineEndings(" "))}{PlaceOf(cause, code)}", cause);
    }

    private static string PlaceOf(Exception problem, Assembly code)
    {
        var frame = new StackTrace(problem, fNeedFileInfo: true).GetFrames().FirstOrDefault(frame => frame.GetMethod()?.Module.Assembly == code);
        return frame?.GetFileName() is { } file ? $" ({file}:{frame.GetFileLineNumber()})" : "";
    }
}
