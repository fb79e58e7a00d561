namespace Condyle.Analyzers.Reading;

/// <summary>A place in lowered code that jumps lead to.</summary>
internal sealed class JumpLabel
{
    public int Position { get; set; } = -1;
}
