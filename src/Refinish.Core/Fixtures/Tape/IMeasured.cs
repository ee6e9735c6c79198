using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>A kind of fixture by its record of measurements alone.</summary>
internal interface IMeasured<TTape>
    where TTape : class
{
    bool Measures(TTape tape);

    /// <summary>The readings that are not 0, with their ±.</summary>
    IEnumerable<TapeReading<TTape>> Taken(TTape tape, Length plusMinus, ReadingSpread spread);
}
