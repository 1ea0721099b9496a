// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/parts/parts_panel.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QVBoxLayout>

#include "app/panels/parts/part_delegate.h"
#include "app/panels/parts/part_list.h"

namespace howlmap::app {

PartsPanel::PartsPanel(QWidget* parent)
    : QWidget(parent),
      parts_(new PartList(load_parts(), this)),
      search_(new QLineEdit(this)),
      list_(new QListView(this)) {
    setObjectName(QStringLiteral("parts_panel"));
    setFocusProxy(search_);
    search_->setPlaceholderText(tr("Search parts, e.g. wedge 12"));
    search_->setClearButtonEnabled(true);
    search_->setAccessibleName(tr("Search parts"));
    search_->installEventFilter(this);
    list_->setModel(parts_);
    list_->setAccessibleName(tr("Parts"));
    list_->setItemDelegate(new PartDelegate(list_));
    list_->setDragEnabled(true);
    list_->setDragDropMode(QAbstractItemView::DragOnly);
    list_->setUniformItemSizes(true);
    list_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    auto* hint = new QLabel(tr("Drag onto the plan, or press Enter."), this);
    hint->setWordWrap(true);

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(6, 6, 6, 6);
    layout->addWidget(search_);
    layout->addWidget(list_, 1);
    layout->addWidget(hint);

    connect(search_, &QLineEdit::textChanged, this, [this](const QString& text) {
        parts_->set_search(text);
        list_->setCurrentIndex(parts_->best_part());
    });
    connect(search_, &QLineEdit::returnPressed, this, [this] { choose(list_->currentIndex()); });
    connect(list_, &QListView::activated, this, &PartsPanel::choose);
    list_->setCurrentIndex(parts_->best_part());
}

void PartsPanel::choose(const QModelIndex& index) {
    if (const Part* part = parts_->part_at(index)) Q_EMIT chosen(part->preset);
}

/// The arrows walk the list while the cursor stays in the search field.
bool PartsPanel::eventFilter(QObject* watched, QEvent* event) {
    if (watched == search_ && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Down || key == Qt::Key_Up) {
            const int step = key == Qt::Key_Down ? 1 : -1;
            for (int row = list_->currentIndex().row() + step; row >= 0 && row < parts_->rowCount(); row += step) {
                if (!parts_->part_at(parts_->index(row))) continue;
                list_->setCurrentIndex(parts_->index(row));
                break;
            }
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace howlmap::app
