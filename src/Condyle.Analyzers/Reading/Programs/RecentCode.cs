using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Reading;

/// <summary>The lowered code of the few files of a project that were lowered last: when one of them is typed in, most of it still holds.</summary>
internal sealed class RecentCode
{
    private readonly LinkedList<TreeCode> files = [];

    /// <summary>The code of a version of a file, which is kept for its next version instead of that of the one before. Who asks for the same version at once gets the same.</summary>
    public TreeCode Of(SyntaxTree tree, ulong elsewhere)
    {
        lock (files)
        {
            var last = files.FirstOrDefault(code => code.Path == tree.FilePath);
            if (last?.IsOf(tree, elsewhere) == true)
                return last;
            if (last is not null)
                files.Remove(last);
            var code = TreeCode.Of(tree, elsewhere, last);
            files.AddFirst(code);
            if (files.Count > Limits.RecentFiles)
                files.RemoveLast();
            return code;
        }
    }
}
