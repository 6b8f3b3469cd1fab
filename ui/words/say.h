#pragma once

#include <QCoreApplication>

namespace warmbench::ui {

/// A text of the program's in the language that is set; the context of all of them is `Warmbench`.
inline QString say(const char* text) {
    return QCoreApplication::translate("Warmbench", text);
}

} // namespace warmbench::ui
