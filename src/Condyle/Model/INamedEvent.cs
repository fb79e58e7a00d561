namespace Condyle.Model;

/// <summary>An event that makes something with a name.</summary>
internal interface INamedEvent
{
    Text Name { get; }
}
