#include "core/season/taxon_choice.h"

#include "core/book/query.h"
#include "core/crop/library/taxon_name.h"

#include <algorithm>
#include <map>
#include <set>

namespace warmbench::season {
namespace {

void addNames(std::set<std::string>& names, const auto& taxon) {
    names.insert(taxon.name);
    names.insert(taxon.synonyms.begin(), taxon.synonyms.end());
    names.insert(taxon.commonNames.begin(), taxon.commonNames.end());
}

} // namespace

Result<TaxonChoice> chooseTaxon(const HouseBook& book, const RecipeLibrary& library, std::string_view name) {
    if (name.empty()) return Refusal{"taxon", phrase("no name is given")};
    if (const Taxon* taxon = findTaxon(book, name)) return TaxonChoice{*taxon, false};
    const std::vector<const KnownTaxon*> known = library.named(name);
    if (known.empty())
        return Refusal{std::string(name),
                       phrase("neither the book nor the built-in recipes know this taxon")};
    if (known.size() > 1) {
        std::string names;
        for (const KnownTaxon* one : known) names += (names.empty() ? "" : ", ") + one->name;
        return Refusal{std::string(name), phrase("it is a name of several: %1", names)};
    }
    const KnownTaxon& one = *known.front();
    if (const Taxon* taxon = findTaxon(book, one.name)) return TaxonChoice{*taxon, false};
    return TaxonChoice{Taxon{book.nextId<Taxon>(), one.name, one.synonyms, one.commonNames, {}}, true};
}

Result<TaxonChoice> chooseOwnTaxon(const HouseBook& book, const RecipeLibrary& library,
                                   std::string_view name) {
    if (auto choice = chooseTaxon(book, library, name); choice || name.empty()) return choice;
    return TaxonChoice{Taxon{book.nextId<Taxon>(), std::string(name), {}, {}, {}}, true};
}

Command withTaxon(const TaxonChoice& choice, Command command, const std::string& label) {
    if (!choice.isNew) return command;
    Taxon added = choice.taxon;
    added.id = {};
    return {Group{label, {Command{Put<Taxon>{added}}, std::move(command)}}};
}

std::vector<TaxonOffer> taxonOffers(const HouseBook& book, const RecipeLibrary& library) {
    std::set<std::string> names;
    for (const auto& [id, taxon] : book.all<Taxon>()) addNames(names, taxon);
    for (const KnownTaxon& taxon : library.taxa()) addNames(names, taxon);
    std::map<std::string, std::string> offers;
    for (const std::string& name : names) {
        const std::vector<const KnownTaxon*> known = library.named(name);
        if (known.size() < 2 || findTaxon(book, name)) {
            offers.emplace(name, name);
            continue;
        }
        for (const KnownTaxon* one : known)
            if (nameKey(one->name).find(nameKey(name)) == std::string::npos)
                offers.emplace(one->name + " (" + name + ")", one->name);
    }
    std::vector<TaxonOffer> list;
    list.reserve(offers.size());
    for (auto& [words, name] : offers) list.push_back({words, name});
    std::stable_sort(list.begin(), list.end(), [](const TaxonOffer& a, const TaxonOffer& b) {
        return std::make_pair(nameKey(a.name), nameKey(a.words)) <
               std::make_pair(nameKey(b.name), nameKey(b.words));
    });
    return list;
}

} // namespace warmbench::season
