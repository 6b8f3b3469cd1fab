#pragma once

#include "core/crop/figure.h"
#include "core/house/slot.h"
#include "core/quantity/day.h"
#include "core/quantity/id.h"
#include "core/quantity/quantity.h"

#include <optional>
#include <string>
#include <vector>

namespace warmbench {

enum class Wood : std::uint8_t { Softwood, SemiRipe, Hardwood, EvergreenHardwood, Basal, LeafBud };
inline constexpr std::array<const char*, 6> woodNames{"softwood",           "semi-ripe", "hardwood",
                                                      "evergreen hardwood", "basal",     "leaf-bud"};

/// A kind of pot or tray.
struct ContainerType {
    ContainerTypeId id;
    std::string name;
    Footprint footprint;
    bool turnable = false;
    Litres volume{};  ///< of medium in one
    int cuttings = 1; ///< that one takes, unless a recipe says otherwise
    friend bool operator==(const ContainerType&, const ContainerType&) = default;
};

struct MediumComponent {
    std::string name;
    int parts = 1;
    friend bool operator==(const MediumComponent&, const MediumComponent&) = default;
};

/// A rooting medium, as parts by volume of its components.
struct Medium {
    MediumId id;
    std::string name;
    std::vector<MediumComponent> components;
    friend bool operator==(const Medium&, const Medium&) = default;
};

/// A botanical name down to the cultivar, such as `Ceanothus 'Concha'` or `Abelia × grandiflora`.
struct Taxon {
    TaxonId id;
    std::string name;
    std::vector<std::string> synonyms;
    std::vector<std::string> commonNames;
    std::string caution; ///< of her own; what is known of the genus is shown besides
    friend bool operator==(const Taxon&, const Taxon&) = default;

    [[nodiscard]] std::string genus() const { return name.substr(0, name.find(' ')); }
};

/// First and last day of a year's striking season; runs over the new year where `from` is after `to`.
struct Season {
    MonthDay from;
    MonthDay to;
    friend bool operator==(const Season&, const Season&) = default;
};

struct IntRange {
    int low = 0;
    int high = 0;
    friend bool operator==(const IntRange&, const IntRange&) = default;
};

/// How one taxon's cuttings of one wood are struck and kept, each figure with its source.
struct Recipe {
    RecipeId id;
    TaxonId taxon;
    Wood wood = Wood::Softwood;
    std::string name;      ///< to tell two recipes of one taxon and wood apart; may be empty
    std::string origin;    ///< key of the built-in recipe that it was copied from; may be empty
    Figure<Season> season; ///< for the northern hemisphere, at the place that the source means
    Figure<Millimetres> cuttingLength;
    Figure<std::optional<int>> nodes;
    Figure<std::optional<int>> nodesBuried;
    Figure<bool> wound;
    Figure<bool> tipRemoved;
    Figure<std::string> leafTrim; ///< `none`, `third`, `half`
    Figure<Celsius> rootZoneLow;
    Figure<Celsius> rootZoneIdeal;
    Figure<Celsius> rootZoneHigh;
    Figure<Celsius> air;
    Figure<IntRange> daysToRoot;       ///< with the root zone at rootZoneIdeal
    Figure<Celsius> base;              ///< of thermal time
    Figure<IntRange> takePercent;      ///< ordinary good practice, low to high
    Figure<std::string> hormone;       ///< such as `IBA 1000-3000 ppm`, or `none`
    Figure<std::string> hormoneForm;   ///< `powder`, `quick dip`, `none`, ...
    Figure<std::vector<Cover>> covers; ///< the first is preferred
    Figure<std::vector<MediumComponent>> medium;
    Figure<std::string> container; ///< name of a container type
    Figure<int> cuttingsPerContainer;
    Figure<int> weanDays;
    Figure<int> growOnDays; ///< from weaned to ready to pot on
    Figure<std::string> aftercare;
    Figure<std::string> caution;
    friend bool operator==(const Recipe&, const Recipe&) = default;
};

/// What a stock yields of one wood in one season.
struct Flush {
    Wood wood = Wood::Softwood;
    Season season;
    int cuttingsPerPlant = 0; ///< at one picking
    int regrowthDays = 0;     ///< until the next picking; a flush within the season every so many days
    friend bool operator==(const Flush&, const Flush&) = default;
};

/// Stock plants of one taxon in one place.
struct Stock {
    StockId id;
    TaxonId taxon;
    std::string name;
    std::string place;
    int plants = 0;
    std::vector<Flush> flushes;
    std::string health; ///< notes
    friend bool operator==(const Stock&, const Stock&) = default;
};

/// Plants wanted: so many of a taxon, potted on, by a day.
struct Target {
    TargetId id;
    std::string name; ///< such as `T14`
    TaxonId taxon;
    int plants = 0;
    Day due;
    Money worth{};            ///< of one plant
    std::optional<Wood> wood; ///< where only one will do
    std::string note;
    friend bool operator==(const Target&, const Target&) = default;
};

} // namespace warmbench
