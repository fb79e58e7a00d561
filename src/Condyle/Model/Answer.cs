namespace Condyle.Model;

/// <summary>The three answers to a question about a rig that may not be known whole.</summary>
internal enum Answer
{
    Open,
    Yes,
    No,
}
