#pragma once

#include "core/book/command.h"
#include "core/crop/library/library.h"

#include <string_view>
#include <vector>

namespace warmbench::season {

/// A taxon that a name means, and whether the book has still to be given it.
struct TaxonChoice {
    Taxon taxon; ///< with the id that it has, or will get when it is the next taxon put in
    bool isNew = false;
};

/// The taxon of this botanical name, synonym or common name: the book's own, else one that the built-in
/// recipes know, ready to be put into the book with all its names. Refused where nothing or no one thing is
/// meant.
[[nodiscard]] Result<TaxonChoice> chooseTaxon(const HouseBook& book, const RecipeLibrary& library,
                                              std::string_view name);

/// The same for a name that neither knows: a taxon of her own. Refused for an empty name.
[[nodiscard]] Result<TaxonChoice> chooseOwnTaxon(const HouseBook& book, const RecipeLibrary& library,
                                                 std::string_view name);

/// `command`, after a new taxon has been put in where the choice is one; done and undone as one thing named
/// `label`.
[[nodiscard]] Command withTaxon(const TaxonChoice& choice, Command command, const std::string& label);

/// A line of a list from which a taxon is picked.
struct TaxonOffer {
    std::string words; ///< a name, or `Viburnum opulus (snowball)` where the name alone means several
    std::string name;  ///< that chooseTaxon takes
};

/// Every name by which a taxon can be chosen, each once, in the order of the names, a species before its
/// cultivars. A name of several is not among them: each of the several is offered with it, unless its own
/// name has it in it already.
[[nodiscard]] std::vector<TaxonOffer> taxonOffers(const HouseBook& book, const RecipeLibrary& library);

} // namespace warmbench::season
