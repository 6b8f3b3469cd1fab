#pragma once

#include "core/crop/library/caution.h"
#include "core/crop/library/row.h"
#include "core/quantity/result.h"

#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace warmbench {

/// The texts of the files in resources/recipe.
struct LibraryTexts {
    std::string sources;        ///< sources.csv
    std::string published;      ///< recipes.csv
    std::string memory;         ///< recipes_memory.csv
    std::string commonPractice; ///< common_practice.csv
    std::string defaults;       ///< wood_defaults.csv
    std::string cautions;       ///< cautions.csv
};

/// A taxon that rows speak of, with all its names; rows under a synonym are its own.
struct KnownTaxon {
    std::string name;
    std::vector<std::string> synonyms;
    std::vector<std::string> commonNames;
    std::vector<std::size_t> rows; ///< places in RecipeLibrary::rows
};

struct TaxonWood {
    std::string taxon;
    Wood wood = Wood::Softwood;
    friend bool operator==(const TaxonWood&, const TaxonWood&) = default;
};

/// What one row says of one figure.
struct GivenFigure {
    std::string
        taxon; ///< as the row prints it, perhaps a cultivar or a whole genus; empty for a wood in general
    std::string value;
    std::string source;
    std::string evidence;
    std::string note;
};

/// One figure of a recipe and all that the sources say of it, the first to be shown first.
struct FigureComparison {
    FigureText used; ///< in the composed recipe
    std::vector<GivenFigure> given;
    bool differ = false; ///< whether two rows of a taxon, not of a wood in general, say different things
};

/// The built-in recipes, composed figure by figure from rows: published ones first, then those from memory,
/// then common practice and the defaults by wood.
class RecipeLibrary {
public:
    /// Reads the six files. Refused, with file, line and column: a cell that is no figure of its column, a
    /// wood or source that is not known, a taxon and wood twice from memory, a wood without default, a recipe
    /// from memory whose figures contradict each other.
    static Result<RecipeLibrary> read(const LibraryTexts& texts);

    [[nodiscard]] const std::vector<RecipeRow>& rows() const { return m_rows; }
    [[nodiscard]] const std::vector<KnownTaxon>& taxa() const { return m_taxa; }
    [[nodiscard]] const std::vector<Caution>& cautions() const { return m_cautions; }

    /// The taxa of that botanical name or synonym, else all of that common name; names are compared by
    /// nameKey.
    [[nodiscard]] std::vector<const KnownTaxon*> named(std::string_view name) const;
    /// The taxa of which every word stands somewhere in the names; all for no words.
    [[nodiscard]] std::vector<const KnownTaxon*> search(std::string_view words) const;
    /// The woods that rows on a taxon speak of.
    [[nodiscard]] std::set<Wood> woodsOf(const KnownTaxon& taxon) const;
    /// All taxa with their woods, in the order of taxa and Wood.
    [[nodiscard]] std::vector<TaxonWood> pairs() const;

    /// The whole recipe for a taxon and wood; every figure has a source. Each is the first that is given by:
    /// rows on the taxon from publications; those on its species, if it is a cultivar; rows from memory on
    /// either; published rows on the whole genus; common practice for the wood; the default for the wood.
    /// Where figures from different rows do not fit together one is moved, and its source starts with
    /// `derived: ` and says how:
    /// - low <= ideal <= high of the root zone; a published ideal holds, else published limits do;
    /// - a base that is not below the ideal gives way to the next one that is;
    /// - days to root of a row with another ideal are carried to the recipe's over the base;
    /// - a single published take gets the spread of the next row that has one.
    /// The taxon's id and the recipe's name are left to the caller.
    [[nodiscard]] Recipe compose(std::string_view taxonName, Wood wood) const;
    /// The recipe that a Recipe::origin names; nothing where no wood is named by it.
    [[nodiscard]] std::optional<Recipe> composeOrigin(std::string_view origin) const;

    /// Every figure with all that the rows on the taxon, its species and cultivars, its genus and the wood
    /// give.
    [[nodiscard]] std::vector<FigureComparison> sideBySide(std::string_view taxonName, Wood wood) const;

    /// What the lists say of the genera that a taxon is or was placed in.
    [[nodiscard]] std::vector<const Caution*> cautionsOf(std::string_view taxonName) const;

    [[nodiscard]] const Source* source(std::string_view id) const;
    /// A figure's source for people: author, year and title for an id, all else as it is.
    [[nodiscard]] std::string sourceText(std::string_view figureSource) const;

private:
    struct Reading;

    void addRow(RecipeRow row);
    void sortTaxa();
    /// The taxon that a name means: by botanical name or synonym, else by a common name that only one has.
    [[nodiscard]] const KnownTaxon* taxonOf(std::string_view name) const;
    /// The taxon of exactly that key of a name or synonym.
    [[nodiscard]] const KnownTaxon* taxonWithKey(const std::string& key) const;
    /// A taxon's rows of one kind, the better read publications first; of all woods where none is given.
    [[nodiscard]] std::vector<const RecipeRow*> rowsOf(const KnownTaxon* taxon, RowKind kind,
                                                       std::optional<Wood> wood) const;
    /// The rows that a recipe is composed of, those whose figures hold first.
    [[nodiscard]] std::vector<const RecipeRow*> layersOf(std::string_view taxonName, Wood wood) const;
    /// All that is known to mind, of whatever wood; a caution is added to another, never hidden by it.
    [[nodiscard]] Figure<std::string> cautionFor(std::string_view taxonName, Wood wood) const;

    std::vector<RecipeRow> m_rows;
    std::vector<KnownTaxon> m_taxa;
    std::map<std::string, std::size_t> m_taxonByKey; ///< of names and synonyms
    std::vector<Source> m_sources;
    std::map<std::string, std::size_t, std::less<>> m_sourceById;
    std::vector<Caution> m_cautions;
};

} // namespace warmbench
