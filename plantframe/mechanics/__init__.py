"""Published formulas as pure functions: numbers in, numbers out, SI throughout.

Nothing here reads a plan, knows a plant or prints. The unit ends every name; each function says
where its sum comes from. Import the module you need:

    units, ranges        exact conversions; a figure with its low and high
    practice             constants tuned to what stands in gardens
    section, beam, bar   sticks and poles: sections, bending, what a top bar carries
    wire                 droop and pull of a wire
    post, ground         what pushes a post over, and what wood and soil put against it
    embedment            depth of a lasting post by the building code
    wind, wind_en, wind_asce, snow, glass
    timber_nds, timber_en
    fixings, connections nails and screws: sizes and bite; what a fixing holds
    lifting, geometry
"""
