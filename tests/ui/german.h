#pragma once

#include "ui/language/language.h"

namespace warmbench::tests {

/// While it lives, the program speaks German.
struct InGerman {
    ui::Language language;
    const QLocale before;

    InGerman() { language.use(QStringLiteral("de"), QLocale(QLocale::German, QLocale::Germany)); }
    InGerman(const InGerman&) = delete;
    InGerman& operator=(const InGerman&) = delete;
    ~InGerman() { QLocale::setDefault(before); }
};

} // namespace warmbench::tests
