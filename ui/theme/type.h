#pragma once

#include <QFont>

namespace warmbench::ui {

/// The sizes of text, all of one family: the desktop's, or Inter or DejaVu Sans where that has none.
struct TypeSizes {
    QFont body;   ///< 13 px
    QFont strong; ///< body, half bold
    QFont quiet;  ///< 12 px
    QFont title;  ///< 17 px, half bold; for the one thing selected
};

/// The sizes in the family of `desktop`, enlarged in step where the desktop's own text is larger than 13 px.
[[nodiscard]] TypeSizes typeSizes(const QFont& desktop);

} // namespace warmbench::ui
