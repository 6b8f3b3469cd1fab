#pragma once

#include <QCoreApplication>

namespace warmbench::ui {

/// A text of the program's in the language that is set. `which` tells two meanings of one word apart for
/// those who translate it.
inline QString say(const char* text, const char* which = nullptr) {
    return QCoreApplication::translate("Warmbench", text, which);
}

} // namespace warmbench::ui
