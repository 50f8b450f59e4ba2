"""What a line of the shed or the yard may hold."""

from __future__ import annotations

ITEM = (
    "{count} of?, {cut:section}, {size}, mesh {length:mesh}, {length}*, {nail}, at {number:price}, "
    "at? {money:price} each?, {gauge}, {number:price} each/a_length?, {stuff}*, {count:packs} "
    "balls/ball/rolls/roll/boxes/box/packets/packet/bags/bag, {cultivar}, {weight}, {spot}*"
)
